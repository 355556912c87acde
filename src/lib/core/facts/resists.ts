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
}

const trade = (locator: string) =>
  ({ evidence: 'commonPractice', source: 'tradePractice', locator }) as const;

/** Every resist that a job may name. */
export const resistFacts = {
  'nail-varnish': {
    holds: 'fair',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'acetone',
    ...trade('two thin coats'),
  },
  'paint-pen': {
    holds: 'fair',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'acetone',
    ...trade('gone over twice'),
  },
  'permanent-marker': {
    holds: 'weak',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'alcohol',
    ...trade('the weakest'),
  },
  vinyl: {
    holds: 'strong',
    applied: 'cold',
    softensInAlkali: false,
    remover: null,
    ...trade('every edge pressed down'),
  },
  toner: {
    holds: 'fair',
    applied: 'hot',
    softensInAlkali: false,
    remover: 'acetone',
    ...trade('ironed on, pinholes touched up'),
  },
  'dry-film': {
    holds: 'strong',
    applied: 'light',
    softensInAlkali: true,
    remover: null,
    ...trade('soda develops it, lye strips it'),
  },
  asphaltum: {
    holds: 'strong',
    applied: 'cold',
    softensInAlkali: false,
    remover: 'white-spirit',
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
