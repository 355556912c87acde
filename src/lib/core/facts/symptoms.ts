import type { Backing } from './first-aid.ts';
import type { MetalFamily } from './metals.ts';
import type { Anion } from './salts/salt-facts.ts';

/** Where a symptom stands in the list: what can hurt, what the current shows, the piece, the bath. */
export const symptomGroups = ['grave', 'current', 'piece', 'bath'] as const;
export type SymptomGroup = (typeof symptomGroups)[number];

/** A sign that a job goes wrong; what is said of it rests on this. */
export interface SymptomFacts extends Backing {
  readonly group: SymptomGroup;
  /** one of its causes can hurt: stop first, find out after */
  readonly off: boolean;
  /** only with a stainless plate, or only without one */
  readonly plate?: 'stainless' | 'other';
  /** only where the supply shows amps */
  readonly needsAmps?: true;
  /** metals of the piece that it can show on */
  readonly on?: readonly MetalFamily[];
  /** only with silver in the bath */
  readonly withSilver?: true;
  /** only in a bath of this */
  readonly inBath?: Anion;
}

const trade = (locator: string) =>
  ({ evidence: 'commonPractice', source: 'tradePractice', locator }) as const;
const recalled = (locator: string) => ({ evidence: 'fromMemory', source: 'memory', locator }) as const;

/** Every symptom, the gravest first. Stored jobs name them by these ids. */
export const symptomFacts = {
  'hot-clip': { group: 'grave', off: true, ...recalled('a short, or more current than a joint carries') },
  pool: {
    group: 'grave',
    off: true,
    evidence: 'regulatory',
    source: 'niosh1',
    locator: 'chlorine: leave the room; that it comes when the metal is spent is our own estimate',
  },
  ammonia: {
    group: 'grave',
    off: true,
    evidence: 'measured',
    source: 'nitrateReduction',
    locator: 'nitrate turns to nitrite and ammonia at the plate',
  },
  crust: {
    group: 'grave',
    off: true,
    withSilver: true,
    evidence: 'measured',
    source: 'fulminating',
    locator: 'explodes when moved, dried or scraped',
  },
  yellow: {
    group: 'grave',
    off: true,
    evidence: 'measured',
    source: 'cr6Transpassive',
    locator: 'steels with chromium on the + side give chromate',
  },
  hot: { group: 'grave', off: true, ...trade('resist lifts, more mist') },
  jump: { group: 'current', off: true, needsAmps: true, ...trade('more bare metal takes more current') },
  fall: { group: 'current', off: true, needsAmps: true, ...trade('film, or metal used up') },
  'no-bubbles': { group: 'current', off: true, ...trade('look at each joint') },
  'fizz-piece': { group: 'current', off: true, ...trade('bubbles belong at the plate') },
  trees: {
    group: 'current',
    off: true,
    withSilver: true,
    ...trade('silver grows from the plate; a plastic stick'),
  },
  lift: { group: 'piece', off: true, ...trade('grease, haste, heat') },
  uneven: {
    group: 'piece',
    off: true,
    evidence: 'computed',
    source: 'fieldSolver',
    locator: 'current crowds at edges; a wide gap evens it; stopping out is common practice',
  },
  'film-pink': {
    group: 'piece',
    off: true,
    on: ['silver', 'brass'],
    ...recalled('copper left over, or copper settled'),
  },
  white: { group: 'piece', off: true, ...recalled('chlorides, silver sulfate, tin') },
  'film-black': { group: 'piece', off: true, ...recalled('fine metal, oxide, silver chloride in light') },
  'green-stainless': {
    group: 'bath',
    off: true,
    plate: 'stainless',
    evidence: 'measured',
    source: 'cr6Transpassive',
    locator: 'stainless steel on plus',
  },
  scum: { group: 'bath', off: false, plate: 'other', ...trade('copper salts') },
  brown: { group: 'bath', off: true, ...recalled('copper or rust as mud; dye that stays can be chromate') },
  cloudy: { group: 'bath', off: false, ...recalled('chloride of tap water with silver; salts that settle') },
  ages: {
    group: 'bath',
    off: false,
    on: ['silver'],
    inBath: 'nitrate',
    evidence: 'measured',
    source: 'nitrateReduction',
    locator:
      'nitrite and ammonia grow with the charge; copper of the alloy and loose silver: common practice',
  },
} as const satisfies Readonly<Record<string, SymptomFacts>>;

export type SymptomId = keyof typeof symptomFacts;
export const symptomIds = Object.keys(symptomFacts) as readonly SymptomId[];

export const isSymptom = (id: string): id is SymptomId => Object.hasOwn(symptomFacts, id);

/** What a bench has, as far as symptoms are told by it. Null where no job says it: then all of it is told. */
export interface SymptomBench {
  readonly isStainless: boolean | null;
  readonly showsAmps: boolean | null;
  readonly hasKnobs: boolean | null;
  readonly isBattery: boolean | null;
  readonly family: MetalFamily | null;
  readonly holdsSilver: boolean | null;
  readonly anion: Anion | null;
}

export const anyBench: SymptomBench = {
  isStainless: null,
  showsAmps: null,
  hasKnobs: null,
  isBattery: null,
  family: null,
  holdsSilver: null,
  anion: null,
};

function canShow({ plate, needsAmps, on, withSilver, inBath }: SymptomFacts, bench: SymptomBench): boolean {
  if (plate !== undefined && bench.isStainless !== null && (plate === 'stainless') !== bench.isStainless)
    return false;
  if (needsAmps && bench.showsAmps === false) return false;
  if (on !== undefined && bench.family !== null && !on.includes(bench.family)) return false;
  if (inBath !== undefined && bench.anion !== null && inBath !== bench.anion) return false;
  return !(withSilver && bench.holdsSilver === false);
}

/** The symptoms that can show on a bench, the gravest first. */
export const symptomsOn = (bench: SymptomBench): readonly SymptomId[] =>
  symptomIds.filter((id) => canShow(symptomFacts[id], bench));
