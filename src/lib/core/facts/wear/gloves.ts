import type { Datum } from '../datum.ts';
import type { Backing } from '../first-aid.ts';

export type GloveMaterial =
  'nitrile-thin' | 'nitrile-thick' | 'natural-rubber' | 'neoprene' | 'pvc' | 'butyl' | 'laminate' | 'pva';

/** What a glove is good for: the whole work, a splash that is washed off at once, or nothing. */
export type Verdict = 'wear' | 'splash' | 'never';

export interface Glove extends Backing {
  readonly material: GloveMaterial;
  readonly verdict: Verdict;
  /** time until the liquid comes through; null where only a class is known, or nothing */
  readonly breakthrough: Datum | null;
}

const recalled = { evidence: 'fromMemory', source: 'memory' } as const;
const permeation = { ...recalled, locator: 'glove makers’ permeation tables' };
const slide = (locator: string) =>
  ({ evidence: 'commonPractice', source: 'gloveTeaching', locator }) as const;
const guide = (locator: string) => ({ evidence: 'commonPractice', source: 'gloveGuide', locator }) as const;

const through = (value: number, uncertainty: Datum['uncertainty'], backing: Backing): Datum => ({
  value,
  unit: 'min',
  uncertainty,
  validFor: {},
  ...backing,
});

/** Minutes promised by each letter on a glove of type A or B. */
export const letterMinutes = through(
  30,
  { kind: 'exact' },
  { evidence: 'regulatory', source: 'en374', locator: 'types A and B: level 2 for each letter shown' },
);

/** Marks on goggles that are made for splashes. */
export const goggleMarks = {
  en166: { evidence: 'regulatory', source: 'en166', locator: 'frame symbol 3, liquids' },
  z87: { evidence: 'regulatory', source: 'ansiZ87', locator: 'D3, splash and droplet' },
  vents: { evidence: 'regulatory', source: 'goggleVents', locator: 'hooded, indirect vents' },
} as const satisfies Record<string, Backing>;

/** Source for the advice that two layers of gloves do not replace the right material. */
export const gloveLayers = {
  evidence: 'measured',
  source: 'gloveLayers',
  locator: '2-butoxyethanol through one, two and three layers',
} as const satisfies Backing;

/**
 * Dissolved salts do not pass through an undamaged glove. Only a material that dissolves in water is unfit.
 */
export const forWater: readonly Glove[] = [
  {
    material: 'nitrile-thin',
    verdict: 'wear',
    breakthrough: null,
    ...recalled,
    locator: 'EN ISO 374-2 leak test; no letter stands for a salt solution',
  },
  { material: 'natural-rubber', verdict: 'wear', breakthrough: null, ...recalled, locator: 'as nitrile' },
  { material: 'pva', verdict: 'never', breakthrough: null, ...slide('PVA dissolves in water') },
];

export const acetoneGloves: readonly Glove[] = [
  {
    material: 'butyl',
    verdict: 'wear',
    breakthrough: null,
    ...guide('acetone: the only type recommended for extended contact'),
  },
  { material: 'laminate', verdict: 'wear', breakthrough: null, ...permeation },
  {
    material: 'natural-rubber',
    verdict: 'splash',
    breakthrough: through(10, { kind: 'notStated' }, guide('acetone, natural rubber: about 10 min')),
    ...guide('acetone: incidental contact only'),
  },
  {
    material: 'nitrile-thin',
    verdict: 'never',
    breakthrough: through(4, { kind: 'band', low: 0, high: 4 }, guide('acetone, nitrile: less than 4 min')),
    ...guide('acetone: nitrile not recommended for any use'),
  },
  { material: 'pvc', verdict: 'never', breakthrough: null, ...slide('PVC: poor for most organic solvents') },
];

export const acetateGloves: readonly Glove[] = [
  { material: 'butyl', verdict: 'wear', breakthrough: null, ...slide('butyl: good for ketones and esters') },
  { material: 'laminate', verdict: 'wear', breakthrough: null, ...permeation },
  { material: 'nitrile-thin', verdict: 'never', breakthrough: null, ...permeation },
  { material: 'pvc', verdict: 'never', breakthrough: null, ...slide('PVC: poor for most organic solvents') },
];

export const alcoholGloves: readonly Glove[] = [
  { material: 'nitrile-thick', verdict: 'wear', breakthrough: null, ...permeation },
  { material: 'nitrile-thin', verdict: 'splash', breakthrough: null, ...permeation },
  { material: 'pvc', verdict: 'never', breakthrough: null, ...slide('PVC: poor for most organic solvents') },
];

/** Level 6 of EN ISO 374-1: at least 480 min. */
const lyeThrough = through(480, { kind: 'notStated' }, permeation);
export const lyeGloves: readonly Glove[] = [
  { material: 'nitrile-thick', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'neoprene', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'pvc', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'nitrile-thin', verdict: 'splash', breakthrough: null, ...permeation },
];

/** Butyl, good for ketones, is poor against these. */
export const spiritGloves: readonly Glove[] = [
  { material: 'nitrile-thick', verdict: 'wear', breakthrough: null, ...permeation },
  { material: 'nitrile-thin', verdict: 'splash', breakthrough: null, ...permeation },
  { material: 'butyl', verdict: 'never', breakthrough: null, ...slide('butyl: poor for hydrocarbons') },
  { material: 'natural-rubber', verdict: 'never', breakthrough: null, ...permeation },
];

/**
 * For sensitisers and poisons, which must not touch the skin at all. Two layers, because a hole is noticed
 * late.
 */
export const doubled: readonly Glove[] = [
  {
    material: 'nitrile-thick',
    verdict: 'wear',
    breakthrough: null,
    ...recalled,
    locator: 'as for any salt solution; thicker, because a pinhole is enough',
  },
  {
    material: 'nitrile-thin',
    verdict: 'wear',
    breakthrough: null,
    ...recalled,
    locator: 'two pairs, changed each time',
  },
  { material: 'pva', verdict: 'never', breakthrough: null, ...slide('PVA dissolves in water') },
];
