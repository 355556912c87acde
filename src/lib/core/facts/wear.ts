import type { Datum } from './datum.ts';
import type { Backing } from './first-aid.ts';
import type { SourceId } from './sources.ts';
import { labels } from './substances.ts';
import type { Pictogram } from './substances.ts';

export type GloveMaterial =
  'nitrile-thin' | 'nitrile-thick' | 'natural-rubber' | 'neoprene' | 'pvc' | 'butyl' | 'laminate' | 'pva';

/** How far a glove goes: for the work, for a splash that is washed off at once, or not at all. */
export type Verdict = 'wear' | 'splash' | 'never';

export interface Glove extends Backing {
  readonly material: GloveMaterial;
  readonly verdict: Verdict;
  /** until the liquid is through; null where only a class, or nothing, is known */
  readonly breakthrough: Datum | null;
}

/** Classification of what is in the bottle. Its own label or data sheet wins. */
export interface WearLabel {
  readonly signal: 'Danger' | 'Warning' | null;
  readonly hazards: readonly string[];
  readonly pictograms: readonly (Pictogram | 'GHS02')[];
  readonly source: SourceId;
}

/** One salt, bath, solvent or helper, and what to wear for it. Texts stand in the words room by these ids. */
export interface Worn {
  readonly group: 'salt' | 'bath' | 'solvent' | 'helper';
  readonly label: WearLabel;
  readonly gloves: readonly Glove[];
  readonly eyes: 'goggles' | 'goggles-mist' | 'goggles-and-shield';
  readonly body: 'apron' | 'cotton' | 'waterproof';
  readonly air: 'no-dust' | 'open-bath' | 'chlorine' | 'vapour' | 'still';
  readonly aid: 'irritant' | 'oxidiser' | 'metal' | 'silver' | 'solvent' | 'lye' | 'mild';
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

/** The class that the letters on a glove of types A and B stand for. */
export const letterMinutes = through(
  30,
  { kind: 'exact' },
  { evidence: 'regulatory', source: 'en374', locator: 'types A and B: level 2 for each letter shown' },
);

/** What shows that goggles are made for splashes. */
export const goggleMarks = {
  en166: { evidence: 'regulatory', source: 'en166', locator: 'frame symbol 3, liquids' },
  z87: { evidence: 'regulatory', source: 'ansiZ87', locator: 'D3, splash and droplet' },
  vents: { evidence: 'regulatory', source: 'goggleVents', locator: 'hooded, indirect vents' },
} as const satisfies Record<string, Backing>;

/** Two gloves are no cure. */
export const gloveLayers = {
  evidence: 'measured',
  source: 'gloveLayers',
  locator: '2-butoxyethanol through one, two and three layers',
} as const satisfies Backing;

/** Dissolved salts do not pass a whole glove; only what dissolves in water is no glove for a bath. */
const forWater: readonly Glove[] = [
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

const acetoneGloves: readonly Glove[] = [
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

const acetateGloves: readonly Glove[] = [
  { material: 'butyl', verdict: 'wear', breakthrough: null, ...slide('butyl: good for ketones and esters') },
  { material: 'laminate', verdict: 'wear', breakthrough: null, ...permeation },
  { material: 'nitrile-thin', verdict: 'never', breakthrough: null, ...permeation },
  { material: 'pvc', verdict: 'never', breakthrough: null, ...slide('PVC: poor for most organic solvents') },
];

const alcoholGloves: readonly Glove[] = [
  { material: 'nitrile-thick', verdict: 'wear', breakthrough: null, ...permeation },
  { material: 'nitrile-thin', verdict: 'splash', breakthrough: null, ...permeation },
  { material: 'pvc', verdict: 'never', breakthrough: null, ...slide('PVC: poor for most organic solvents') },
];

/** Level 6 of EN ISO 374-1: at least 480 min. */
const lyeThrough = through(480, { kind: 'notStated' }, permeation);
const lyeGloves: readonly Glove[] = [
  { material: 'nitrile-thick', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'neoprene', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'pvc', verdict: 'wear', breakthrough: lyeThrough, ...permeation },
  { material: 'nitrile-thin', verdict: 'splash', breakthrough: null, ...permeation },
];

const flammable = (hazards: readonly string[], pictograms: WearLabel['pictograms']): WearLabel => ({
  signal: 'Danger',
  hazards,
  pictograms,
  source: 'clpAnnexVI',
});

const salt = (label: WearLabel, aid: Worn['aid']): Worn => ({
  group: 'salt',
  label,
  gloves: forWater,
  eyes: 'goggles',
  body: 'apron',
  air: 'no-dust',
  aid,
});

const bath = (label: WearLabel, air: Worn['air'], aid: Worn['aid']): Worn => ({
  group: 'bath',
  label,
  gloves: forWater,
  eyes: 'goggles-mist',
  body: 'apron',
  air,
  aid,
});

const solvent = (label: WearLabel, gloves: readonly Glove[]): Worn => ({
  group: 'solvent',
  label,
  gloves,
  eyes: 'goggles',
  body: 'cotton',
  air: 'vapour',
  aid: 'solvent',
});

/** Everything a maker may have open at the bench. */
export const worn = {
  'sodium-nitrate': salt(labels.salts.NaNO3, 'oxidiser'),
  'potassium-nitrate': salt(labels.salts.KNO3, 'oxidiser'),
  'table-salt': salt(labels.salts.NaCl, 'mild'),
  'copper-sulfate': salt(labels.salts.CuSO4, 'metal'),
  'sodium-sulfate': salt(labels.salts.Na2SO4, 'mild'),
  'silver-bath': bath(labels.usedBath.silver, 'open-bath', 'silver'),
  'copper-bath': bath(labels.usedBath.copper, 'open-bath', 'metal'),
  'salt-water-bath': bath(labels.usedBath.copper, 'chlorine', 'metal'),
  acetone: solvent(flammable(['H225', 'H319', 'H336', 'EUH066'], ['GHS02', 'GHS07']), acetoneGloves),
  'ethyl-acetate': solvent(flammable(['H225', 'H319', 'H336', 'EUH066'], ['GHS02', 'GHS07']), acetateGloves),
  isopropanol: solvent(flammable(['H225', 'H319', 'H336'], ['GHS02', 'GHS07']), alcoholGloves),
  ethanol: solvent(flammable(['H225'], ['GHS02']), alcoholGloves),
  lye: {
    group: 'helper',
    label: { signal: 'Danger', hazards: ['H314'], pictograms: ['GHS05'], source: 'clpAnnexVI' },
    gloves: lyeGloves,
    eyes: 'goggles-and-shield',
    body: 'waterproof',
    air: 'still',
    aid: 'lye',
  },
  'soda-ash': {
    group: 'helper',
    label: { signal: 'Warning', hazards: ['H319'], pictograms: ['GHS07'], source: 'clpAnnexVI' },
    gloves: forWater,
    eyes: 'goggles',
    body: 'apron',
    air: 'no-dust',
    aid: 'irritant',
  },
} as const satisfies Record<string, Worn>;

export type ThingId = keyof typeof worn;

/** What eyes, body and air are worn for rests on the classes above: advice made for this work. */
export const wearAdvice = {
  evidence: 'commonPractice',
  source: 'wearAdvice',
  locator: 'eyes, body and air by task',
} as const satisfies Backing;

/** Hazard statements beyond those of the bath salts (CLP Annex III). */
export const moreHazardStatements = {
  H225: 'Highly flammable liquid and vapour',
  H336: 'May cause drowsiness or dizziness',
  EUH066: 'Repeated exposure may cause skin dryness or cracking',
} as const;
