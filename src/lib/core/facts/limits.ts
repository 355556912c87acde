import type { Datum } from './datum.ts';

/** Limits shared by every plan, screen and paper. They are written nowhere else. */
export const limits = {
  planVolts: {
    value: 9.5,
    unit: 'V',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'never as high as 10',
  },
  refusedVolts: {
    value: 10,
    unit: 'V',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'never as high as 10',
  },
  warnTemperature: {
    value: 35,
    unit: 'degC',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'resist lifts, more mist',
  },
  stopTemperature: {
    value: 40,
    unit: 'degC',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'resist lifts, more mist',
  },
  chlorineShort: {
    value: 0.5,
    unit: 'ppm',
    uncertainty: { kind: 'exact' },
    validFor: { time: [0, 15, 'min'] },
    evidence: 'regulatory',
    source: 'scoel76',
    locator: '15 minute limit; NIOSH ceiling the same',
  },
  chlorineDanger: {
    value: 10,
    unit: 'ppm',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'regulatory',
    source: 'niosh1',
    locator: 'IDLH',
  },
  hydrogenFlammable: {
    value: 4,
    unit: '%',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'measured',
    source: 'hydrogenLimit',
    locator: 'lower explosive limit in air',
  },
  /** the plan warns when the current reaches this share of the limiting current */
  filmWarning: {
    value: 0.7,
    unit: '1',
    uncertainty: { kind: 'exact' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'budgetEstimate',
    locator: 'plateau, patches',
  },
} as const satisfies Record<string, Datum>;

/** Values usual in the trade. They are defaults, and a check on the model. */
export const practice = {
  targetDensity: {
    value: 10,
    unit: 'A/dm2',
    uncertainty: { kind: 'band', low: 5, high: 10 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'gentle bite, 0.05 to 0.1 A/cm²',
  },
  silverStartVolts: {
    value: 5,
    unit: 'V',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'silver in sodium nitrate starts here',
  },
  silverWorkVolts: {
    value: 7,
    unit: 'V',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'silver in sodium nitrate works here',
  },
  copperWorkVolts: {
    value: 5,
    unit: 'V',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'copper and brass',
  },
  plannedMinutes: {
    value: 15,
    unit: 'min',
    uncertainty: { kind: 'band', low: 15, high: 30 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'silver in nitrate: 15 planned, 30 often needed',
  },
  saltWaterMinutes: {
    value: 15,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'copper or brass in salt water',
  },
  /** the depth that these times are assumed to give: it shows under patina and can be felt */
  practiceDepth: {
    value: 100,
    unit: 'um',
    uncertainty: { kind: 'band', low: 50, high: 150 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'a shallow visible bite; depth is our reading of it',
  },
  /** how long an answer to a check counts; after that it is asked again before power */
  answerHolds: {
    value: 30,
    unit: 'min',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'what was looked at may have moved since; our reading',
  },
  /** time ranges are cut off here: a longer run does not fit into a day */
  dayOfWork: {
    value: 10,
    unit: 'h',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'a long day at the bench',
  },
  dissolveHours: {
    value: 2,
    unit: 'h',
    uncertainty: { kind: 'band', low: 2, high: 12 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'two hours at least, better a night',
  },
  smallTubSalt: {
    value: 25,
    unit: 'g',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'a tub a quarter the size of one that takes 100 g',
  },
  largeTubSalt: {
    value: 100,
    unit: 'g',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'tradePractice',
    locator: 'tub four times the small one',
  },
} as const satisfies Record<string, Datum>;

/** Sideways bite over depth, measured where the resist meets the metal. */
export const undercutRatio = {
  value: 0.8,
  unit: '1',
  uncertainty: { kind: 'band', low: 0.5, high: 1.2 },
  validFor: { depthOverWidth: [0.05, 2, '1'] },
  evidence: 'computed',
  source: 'undercutSimulation',
  locator: 'ohmic rows 0.49 to 0.87; real lines 0.6 to 1.2',
} as const satisfies Datum;

/** The width that must remain of a resist line after undercut from both sides. */
export const landReserve = {
  value: 300,
  unit: 'um',
  uncertainty: { kind: 'notStated' },
  validFor: {},
  evidence: 'commonPractice',
  source: 'tradePractice',
  locator: 'what still holds to the metal',
} as const satisfies Datum;

/** Resistance of the leads and clips of a home set-up, together. */
export const leadResistance = {
  value: 0.12,
  unit: 'ohm',
  uncertainty: { kind: 'band', low: 0.05, high: 0.3 },
  validFor: {},
  evidence: 'commonPractice',
  source: 'budgetEstimate',
  locator: 'short the clips on the piece to measure yours',
} as const satisfies Datum;

/** Heat loss of a small open plastic tub. */
export const tubCooling = {
  side: {
    value: 10,
    unit: 'W/m2K',
    uncertainty: { kind: 'relative', value: 0.25 },
    validFor: { temperature: [10, 40, 'degC'] },
    evidence: 'computed',
    source: 'bathCooling',
    locator: 'sides and open top',
  },
  bottom: {
    value: 2,
    unit: 'W/m2K',
    uncertainty: { kind: 'relative', value: 0.5 },
    validFor: { temperature: [10, 40, 'degC'] },
    evidence: 'computed',
    source: 'bathCooling',
    locator: 'on a table',
  },
  heatCapacity: {
    value: 4186,
    unit: 'J/kgK',
    uncertainty: { kind: 'relative', value: 0.08 },
    validFor: {},
    evidence: 'measured',
    source: 'memory',
    locator: 'water; a salt bath holds up to 10 % less',
  },
} as const satisfies Record<string, Datum>;

/** Assumptions for warnings about gas under a lid and in a room. */
export const ventilation = {
  /** air under a lid that somebody closed over the tub by mistake */
  lid: {
    value: 1,
    unit: 'L',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'commonPractice',
    source: 'budgetEstimate',
    locator: 'air between liquid and lid of a small tub; an example',
  },
  /**
   * largest likely share of the current that makes chlorine while the metal dissolves; usually almost none
   * does
   */
  chlorineShare: {
    value: 1,
    unit: '%',
    uncertainty: { kind: 'band', low: 0, high: 1 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'budgetEstimate',
    locator: 'metal that dissolves keeps its potential below that of chlorine',
  },
  mixing: {
    value: 5,
    unit: '1',
    uncertainty: { kind: 'band', low: 1, high: 10 },
    validFor: {},
    evidence: 'commonPractice',
    source: 'dilutionAir',
    locator: 'K of Q = K·G/C: 1 ideal, 10 poor',
  },
} as const satisfies Record<string, Datum>;

/** Size of a bank card: everybody has one to put beside a piece, so that a photograph can be measured. */
export const bankCard = {
  width: {
    value: 85.6,
    unit: 'mm',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'fromMemory',
    source: 'memory',
    locator: 'ISO/IEC 7810, format ID-1',
  },
  height: {
    value: 53.98,
    unit: 'mm',
    uncertainty: { kind: 'notStated' },
    validFor: {},
    evidence: 'fromMemory',
    source: 'memory',
    locator: 'ISO/IEC 7810, format ID-1',
  },
} as const satisfies Record<string, Datum>;
