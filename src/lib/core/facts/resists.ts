import type { Datum } from './datum.ts';
import type { Backing } from './first-aid.ts';

/** Solvents that remove a resist. */
export type Remover = 'acetone' | 'alcohol' | 'white-spirit';

/** How a resist behaves in use. */
export interface ResistFacts extends Backing {
  /** how well it withstands the bath */
  readonly holds: 'strong' | 'fair' | 'weak';
  /** how it is put on */
  readonly applied: 'cold' | 'hot' | 'light';
  /**
   * it lifts in lye or soda, which forms at the plate: keep the plate apart, and stir the bath between runs
   */
  readonly softensInAlkali: boolean;
  /** the flammable solvent that removes it; null where none is needed */
  readonly remover: Remover | null;
  /** from the last coat until it may go into a bath; null for what is stuck, ironed or laminated on */
  readonly dries: (Datum & { readonly unit: 'min' | 'h' }) | null;
}

const trade = (locator: string) =>
  ({ evidence: 'commonPractice', source: 'tradePractice', locator }) as const;

/** Nobody has published how long a resist must dry before a bath, and bottles differ: their own label wins. */
const driesIn = <U extends 'min' | 'h'>(
  value: number,
  unit: U,
  [low, high]: readonly [number, number],
  locator: string,
) => ({
  value,
  unit,
  uncertainty: { kind: 'band', low, high } as const,
  validFor: {},
  ...trade(locator),
});

/** What masks the metal: every resist that a job may name. */
export const resistFacts = {
  'nail-varnish': {
    holds: 'fair',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'acetone',
    dries: driesIn(1, 'h', [0.5, 12], 'two thin coats, a thick one takes a night'),
    ...trade('two thin coats'),
  },
  'paint-pen': {
    holds: 'fair',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'acetone',
    dries: driesIn(1, 'h', [0.5, 12], 'oil paint, dry to the touch long before'),
    ...trade('gone over twice'),
  },
  'permanent-marker': {
    holds: 'weak',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'alcohol',
    dries: driesIn(10, 'min', [5, 30], 'each layer dries at once, three together in minutes'),
    ...trade('the weakest'),
  },
  vinyl: {
    holds: 'strong',
    applied: 'cold',
    softensInAlkali: false,
    remover: null,
    dries: null,
    ...trade('every edge pressed down'),
  },
  toner: {
    holds: 'fair',
    applied: 'hot',
    softensInAlkali: false,
    remover: 'acetone',
    dries: null,
    ...trade('ironed on, pinholes touched up'),
  },
  'dry-film': {
    holds: 'strong',
    applied: 'light',
    softensInAlkali: true,
    remover: null,
    dries: null,
    ...trade('soda develops it, lye strips it'),
  },
  asphaltum: {
    holds: 'strong',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'white-spirit',
    dries: driesIn(4, 'h', [1, 24], 'brushed thin; while it smells of white spirit it is wet'),
    ...trade('brushed thin, dried for hours'),
  },
} as const satisfies Readonly<Record<string, ResistFacts>>;

export type ResistKind = keyof typeof resistFacts;
export const resistKinds = Object.keys(resistFacts) as readonly ResistKind[];

/** Other names of resists. */
export const resistNames: Readonly<Record<string, ResistKind>> = {
  'nail-polish': 'nail-varnish',
  varnish: 'nail-varnish',
  marker: 'permanent-marker',
  sticker: 'vinyl',
  tape: 'vinyl',
  'toner-transfer': 'toner',
  photoresist: 'dry-film',
  bitumen: 'asphaltum',
};

export const isResist = (id: string): id is ResistKind => Object.hasOwn(resistFacts, id);
