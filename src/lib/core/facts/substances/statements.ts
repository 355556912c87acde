/** Hazard statements in the wording of the law (CLP Annex III). */
export const hazardStatements = {
  H220: 'Extremely flammable gas',
  H221: 'Flammable gas',
  H225: 'Highly flammable liquid and vapour',
  H226: 'Flammable liquid and vapour',
  H270: 'May cause or intensify fire; oxidiser',
  H271: 'May cause fire or explosion; strong oxidiser',
  H272: 'May intensify fire; oxidiser',
  H290: 'May be corrosive to metals',
  H301: 'Toxic if swallowed',
  H302: 'Harmful if swallowed',
  H304: 'May be fatal if swallowed and enters airways',
  H312: 'Harmful in contact with skin',
  H314: 'Causes severe skin burns and eye damage',
  H315: 'Causes skin irritation',
  H317: 'May cause an allergic skin reaction',
  H318: 'Causes serious eye damage',
  H319: 'Causes serious eye irritation',
  H330: 'Fatal if inhaled',
  H331: 'Toxic if inhaled',
  H332: 'Harmful if inhaled',
  H334: 'May cause allergy or asthma symptoms or breathing difficulties if inhaled',
  H335: 'May cause respiratory irritation',
  H336: 'May cause drowsiness or dizziness',
  H340: 'May cause genetic defects',
  H341: 'Suspected of causing genetic defects',
  H350: 'May cause cancer',
  H350i: 'May cause cancer by inhalation',
  H351: 'Suspected of causing cancer',
  H360D: 'May damage the unborn child',
  H360Df: 'May damage the unborn child. Suspected of damaging fertility',
  H360FD: 'May damage fertility. May damage the unborn child',
  H372: 'Causes damage to organs through prolonged or repeated exposure',
  H373: 'May cause damage to organs through prolonged or repeated exposure',
  H400: 'Very toxic to aquatic life',
  H410: 'Very toxic to aquatic life with long lasting effects',
  H411: 'Toxic to aquatic life with long lasting effects',
  H412: 'Harmful to aquatic life with long lasting effects',
} as const;

export type HazardCode = keyof typeof hazardStatements;

/** Supplemental statements of the European Union. */
export const extraStatements = {
  EUH031: 'Contact with acids liberates toxic gas',
  EUH066: 'Repeated exposure may cause skin dryness or cracking',
  EUH071: 'Corrosive to the respiratory tract',
} as const;

export type ExtraCode = keyof typeof extraStatements;

/** Statements that a stronger one already covers, so that a label leaves them out. */
const saidBy: Readonly<Partial<Record<HazardCode, readonly HazardCode[]>>> = {
  H319: ['H314', 'H318'],
  H318: ['H314'],
  H315: ['H314'],
  H302: ['H301'],
  H332: ['H330', 'H331'],
  H331: ['H330'],
  H373: ['H372'],
  H351: ['H350', 'H350i'],
  H341: ['H340'],
  H360D: ['H360FD'],
  H360Df: ['H360FD'],
  H411: ['H410'],
  H412: ['H410', 'H411'],
  H400: ['H410'],
  H272: ['H271'],
};

/** Statements from the most to the least serious; labels keep this order. */
export const gravity: readonly HazardCode[] = [
  'H330',
  'H350',
  'H350i',
  'H340',
  'H360FD',
  'H360D',
  'H360Df',
  'H301',
  'H331',
  'H314',
  'H318',
  'H334',
  'H372',
  'H317',
  'H302',
  'H332',
  'H312',
  'H373',
  'H351',
  'H341',
  'H304',
  'H220',
  'H221',
  'H225',
  'H226',
  'H270',
  'H271',
  'H410',
  'H411',
  'H412',
  'H400',
  'H319',
  'H315',
  'H335',
  'H336',
  'H272',
  'H290',
];

/** The statements of several ingredients, most serious first, without those that a stronger one covers. */
export function labelStatements(codes: Iterable<HazardCode>): HazardCode[] {
  const all = new Set(codes);
  return gravity.filter((code) => all.has(code) && !saidBy[code]?.some((worse) => all.has(worse)));
}
