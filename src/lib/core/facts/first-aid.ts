import type { Datum, Statement } from './datum.ts';

/** The source behind a sentence whose text is in the words room. */
export type Backing = Omit<Statement, 'text'>;

const memory = {
  evidence: 'fromMemory',
  source: 'memory',
  locator: 'first-aid practice, unchecked',
} as const;

/** Minutes of rinsing and waiting. Where sources disagree, the longest time is used. */
export const minutes = {
  rinseEye: {
    value: 20,
    unit: 'min',
    uncertainty: { kind: 'band', low: 15, high: 20 },
    validFor: {},
    evidence: 'regulatory',
    source: 'webPoisonControl',
    locator: 'eyes: 15 to 20 minutes; another centre says 5, labels say several: the longest is taken',
  },
  rinseEyeLye: {
    value: 30,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    ...memory,
  },
  rinseSkin: {
    value: 20,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'burnsCentre',
    locator: 'chemical burns: 20 minutes or more',
  },
  rinseCut: {
    value: 15,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'contactFirstAid',
    locator: 'skin contact: 15 minutes at least',
  },
  coolBurn: {
    value: 20,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    ...memory,
  },
} as const satisfies Record<string, Datum>;

const webPoison = (locator: string) =>
  ({ evidence: 'commonPractice', source: 'webPoisonControl', locator }) as const;
const sodiumNitrateCard = (locator: string) =>
  ({ evidence: 'regulatory', source: 'icsc0185', locator }) as const;
const burns = (locator: string) => ({ evidence: 'commonPractice', source: 'burnsCentre', locator }) as const;
const callReady = {
  evidence: 'commonPractice',
  source: 'poisonCentreCall',
  locator: 'what to have ready when you call',
} as const;

/** Source of each line on the help pages, by the line's id. */
export const firstAid = {
  'eye-rinse': webPoison('eyes: running water, lids open'),
  'eye-outward': webPoison('eyes: from the nose outward'),
  'eye-lenses': webPoison('eyes: lenses out, blink'),
  'eye-minutes': webPoison('eyes: 15 to 20 minutes'),
  'eye-call': webPoison('eyes: call after rinsing'),
  'eye-never': memory,
  'eye-hour': webPoison('eyes: after one hour'),
  'eye-metal': {
    evidence: 'regulatory',
    source: 'clpAnnexVI',
    locator: 'H314, H318 of silver and copper salts',
  },
  'eye-lye': memory,
  'eye-yellow': memory,
  'skin-rinse': { evidence: 'commonPractice', source: 'contactFirstAid', locator: 'skin: plenty of water' },
  'skin-off': { evidence: 'commonPractice', source: 'contactFirstAid', locator: 'skin: clothing off' },
  'skin-powder': burns('brush off dry powder'),
  'skin-minutes': burns('20 minutes or more'),
  'skin-doctor': memory,
  'skin-nitrate': { evidence: 'measured', source: 'nitrateTinder', locator: 'drench contaminated clothing' },
  'skin-silver': memory,
  'skin-lye': memory,
  'skin-solvent': memory,
  'skin-nickel': memory,
  'mouth-rinse': sodiumNitrateCard('ingestion: rinse mouth'),
  'mouth-call': callReady,
  'mouth-vomit': { evidence: 'regulatory', source: 'cdcGetOff', locator: 'do not induce vomiting' },
  'mouth-drink': { evidence: 'regulatory', source: 'cdcGetOff', locator: 'do not drink fluids' },
  'mouth-tell': callReady,
  'mouth-nitrate': sodiumNitrateCard('ingestion: blue lips or nails, convulsions'),
  'mouth-metal': memory,
  'mouth-lye': memory,
  'mouth-child': memory,
  'gas-out': memory,
  'gas-plug': memory,
  'gas-sit': memory,
  'gas-stay-out': memory,
  'gas-call': memory,
  'gas-nothing': memory,
  'gas-chlorine': { evidence: 'regulatory', source: 'niosh1', locator: 'chlorine: effects on the lungs' },
  'gas-brown': memory,
  'gas-ammonia': {
    evidence: 'measured',
    source: 'fulminating',
    locator: 'explodes when moved, dried or scraped',
  },
  'gas-solvent': memory,
  'fire-out': memory,
  'fire-plug': memory,
  'fire-nitrate': sodiumNitrateCard('fire: water, it feeds a fire'),
  'fire-solvent': memory,
  'fire-clothes': memory,
  'fire-burn': memory,
  'shock-plug': memory,
  'shock-call': memory,
  'shock-doctor': memory,
  'shock-burn': memory,
  'shock-mains': { evidence: 'regulatory', source: 'selv', locator: 'extra-low voltage' },
  'cut-rinse': { evidence: 'commonPractice', source: 'contactFirstAid', locator: 'skin: plenty of water' },
  'cut-minutes': { evidence: 'commonPractice', source: 'contactFirstAid', locator: 'skin: 15 minutes' },
  'cut-press': memory,
  'cut-cover': memory,
  'cut-doctor': memory,
  'cut-silver': memory,
  'cut-nickel': memory,
  'yellow-off': memory,
  'yellow-hands': memory,
  'yellow-keep': memory,
  'yellow-hand-over': memory,
  'yellow-never': memory,
  'yellow-chromium': {
    evidence: 'measured',
    source: 'cr6Transpassive',
    locator: 'steels with chromium on the + side give chromate',
  },
  'yellow-copper': memory,
  'yellow-iron': memory,
  'yellow-else': memory,
} as const satisfies Record<string, Backing>;

export type FirstAidLine = keyof typeof firstAid;
