/**
 * How a property is run. The seed is fixed so that a gate gives the same answer twice; another one is set
 * with ETCHWRIGHT_SEED. Whatever fails prints its seed and its shrunk example.
 */
const DEFAULT_SEED = 20261125;
const fromEnvironment = Number(process.env['ETCHWRIGHT_SEED'] ?? DEFAULT_SEED);

export const baseSeed = Number.isInteger(fromEnvironment) ? fromEnvironment : DEFAULT_SEED;

/** Parameters of one chunk; chunks differ in seed only. */
export const chunk = (numRuns: number, part = 0) => ({
  numRuns,
  seed: baseSeed + 7919 * part,
});
