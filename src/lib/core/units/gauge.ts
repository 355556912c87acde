/**
 * Sheet and wire gauges. A gauge number means nothing without its system: 20 gauge is 0.81 mm in one system
 * and 0.91 mm in another. So a gauge always carries its system.
 */

/**
 * Brown & Sharpe (American wire gauge), used for silver, copper and brass sheet sold in North America.
 * Defined by 36 gauge = 0.005 in and 0000 = 0.46 in, with 39 equal ratios between them (ASTM B258).
 * @param gauge 0 to 40, whole or not
 * @returns thickness in m
 * @throws RangeError outside 0 to 40
 */
export const brownSharpe = (gauge: number): number => {
  if (!(gauge >= 0 && gauge <= 40)) {
    throw new RangeError(`gauge ${gauge} found, 0 to 40 expected for Brown & Sharpe`);
  }
  return 0.000127 * 92 ** ((36 - gauge) / 39);
};

/** British standard wire gauge 0 to 30, inches (BS 3737; from memory, unchecked). */
const IMPERIAL_INCHES = [
  0.324, 0.3, 0.276, 0.252, 0.232, 0.212, 0.192, 0.176, 0.16, 0.144, 0.128, 0.116, 0.104, 0.092, 0.08, 0.072,
  0.064, 0.056, 0.048, 0.04, 0.036, 0.032, 0.028, 0.024, 0.022, 0.02, 0.018, 0.0164, 0.0148, 0.0136, 0.0124,
] as const;

/**
 * British standard wire gauge.
 * @param gauge whole number, 0 to 30
 * @returns thickness in m
 * @throws RangeError for any other number
 */
export const imperialStandard = (gauge: number): number => {
  const inches = IMPERIAL_INCHES[gauge];
  if (inches === undefined) {
    throw new RangeError(`gauge ${gauge} found, a whole number from 0 to 30 expected for SWG`);
  }
  return inches * 0.0254;
};

export const gaugeUnits = {
  'gauge-BS': { dimension: 'length', factor: Number.NaN, toSi: brownSharpe },
  'gauge-SWG': { dimension: 'length', factor: Number.NaN, toSi: imperialStandard },
} as const;
