import type { BathEvent, BathRecord } from './records.ts';

/*
 * A bath is stored as its events. Events are only added, and the latest one of each job counts. Metal that
 * settles is not subtracted, so that a bath is never taken for cleaner than it is.
 */

/** The present state of a bath, added up from its events. */
export interface BathState {
  readonly where: 'shelf' | 'handed-over';
  /** place on the shelf, in the maker's words */
  readonly place: string;
  readonly madeAt: number;
  readonly lastUsedAt: number;
  /** g of salt as bought, per litre of water */
  readonly strength: number;
  readonly waterMl: number;
  readonly volumeMl: number;
  readonly chargeAh: number;
  /** charge passed by each litre, A·h/L */
  readonly perLitre: number;
  /** mg by element */
  readonly heldMg: Readonly<Record<string, number>>;
  /** mg/L by element */
  readonly dissolved: Readonly<Record<string, number>>;
  /** jobs that have used it, in the order of their latest event */
  readonly jobs: readonly string[];
}

type Masses = Readonly<Record<string, number>>;
export type Used = Extract<BathEvent, { type: 'used' }>;

const PER_LITRE = 1e3;
const tidy = (value: number): number => Number(value.toPrecision(6));

const add = (a: Masses, b: Masses): Masses =>
  Object.fromEntries(
    [...new Set([...Object.keys(a), ...Object.keys(b)])].map((element) => [
      element,
      tidy((a[element] ?? 0) + (b[element] ?? 0)),
    ]),
  );

/** The latest use by each job, since a later event corrects an earlier one. */
const lastUses = (events: readonly BathEvent[]): readonly Used[] => [
  ...new Map(
    events.filter((event): event is Used => event.type === 'used').map((use) => [use.job, use]),
  ).values(),
];

const step = (now: BathState, event: BathEvent): BathState => {
  switch (event.type) {
    case 'mixed': {
      const { at, strength, waterMl, volumeMl, heldMg } = event;
      return { ...now, madeAt: at, lastUsedAt: at, strength, waterMl, volumeMl, heldMg };
    }
    case 'used':
      return { ...now, lastUsedAt: event.at };
    case 'topped-up': {
      // salt adds so little volume that only the water is counted
      const waterMl = now.waterMl + event.waterMl;
      const salt = (now.strength * now.waterMl) / PER_LITRE + event.saltG;
      return {
        ...now,
        waterMl,
        volumeMl: now.volumeMl + event.waterMl,
        strength: tidy((PER_LITRE * salt) / waterMl),
      };
    }
    case 'moved':
      return { ...now, place: event.to };
    case 'handed-over':
      return { ...now, where: 'handed-over', place: event.to };
    case 'kept':
      return { ...now, where: 'shelf' };
    case 'noted':
      return now;
  }
};

const blank: BathState = {
  where: 'shelf',
  place: '',
  madeAt: 0,
  lastUsedAt: 0,
  strength: 0,
  waterMl: 0,
  volumeMl: 0,
  chargeAh: 0,
  perLitre: 0,
  heldMg: {},
  dissolved: {},
  jobs: [],
};

/**
 * Adds up a bath's events. Nothing is subtracted for metal that settles on a plate or leaves with the rinse:
 * the bath holds at most this much.
 */
export function bathNow({ events }: Pick<BathRecord, 'events'>): BathState {
  const inOrder = events.toSorted((a, b) => a.at - b.at);
  const uses = lastUses(inOrder);
  const now = inOrder.reduce(step, blank);
  const chargeAh = uses.reduce((sum, use) => sum + use.chargeAh, 0);
  const heldMg = uses.reduce((held, use) => add(held, use.tookMg), now.heldMg);
  const litres = now.volumeMl / PER_LITRE;
  return {
    ...now,
    chargeAh: tidy(chargeAh),
    perLitre: litres > 0 ? tidy(chargeAh / litres) : 0,
    heldMg,
    dissolved:
      litres > 0
        ? Object.fromEntries(Object.entries(heldMg).map(([element, mg]) => [element, tidy(mg / litres)]))
        : {},
    jobs: uses.filter(({ chargeAh: passed }) => passed > 0).map(({ job }) => job),
  };
}

/** The use of each job by its latest event, without jobs whose use was taken back. */
export const usesOf = ({ events }: Pick<BathRecord, 'events'>): readonly Used[] =>
  lastUses(events.toSorted((a, b) => a.at - b.at)).filter(({ chargeAh }) => chargeAh > 0);

/**
 * A use with the charge that really passed, and its metal in proportion. The earlier event stays; this is a
 * later one of the same job.
 * @param chargeAh 0 takes the use back
 */
export const correctedUse = (use: Used, chargeAh: number, at: number): Used => ({
  ...use,
  at,
  chargeAh,
  tookMg: Object.fromEntries(
    Object.entries(use.tookMg).map(([element, mg]) => [element, tidy((mg * chargeAh) / use.chargeAh)]),
  ),
});

/** The bath with one more event. */
export const withEvent = (bath: BathRecord, event: BathEvent): BathRecord => ({
  ...bath,
  events: [...bath.events, event],
});
