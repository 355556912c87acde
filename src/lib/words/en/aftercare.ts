import type { MetalFamily } from '../../core/facts/metals.ts';

/** Faults that may show on a rinsed piece, and what to do about them. */
export interface Aftercare {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** Metals on which it can show; all metals if left out. */
  readonly on?: readonly MetalFamily[];
}

export const aftercareTexts = { title: 'Rinse, strip, dry', odd: 'If it looks odd' } as const;

const aftercare: readonly Aftercare[] = [
  {
    id: 'tarnish',
    label: 'It darkens within the hour',
    on: ['copper', 'brass'],
    text: 'Salt is still in the corners. Soak in clean water, change it twice, dry warm.',
  },
  {
    id: 'patina',
    label: 'Before a patina',
    text: 'Resist off, rinsed, no fingers on the metal. Keep liver of sulphur away from every acid: together they give off poison gas.',
  },
];

export const aftercareFor = (family: MetalFamily | null): readonly Aftercare[] =>
  aftercare.filter(({ on }) => on === undefined || (family !== null && on.includes(family)));

/** What to do before a piece without its mask is bitten again. */
export const rebiteTexts = [
  'The new mask must sit exactly on the old edges: a shift shows as a second line.',
  'Every edge is undercut a second time, so fine lines may go.',
  'Bite in short runs: the plan does not know this edge.',
] as const;
