/**
 * How a property is run. The seed is fixed so that a gate gives the same answer twice; another one is set
 * with ETCHWRIGHT_SEED. Whatever fails prints its seed and its shrunk example.
 */
const DEFAULT_SEED = 20261125;
const fromEnvironment = Number(process.env['ETCHWRIGHT_SEED'] ?? DEFAULT_SEED);

export const baseSeed = Number.isInteger(fromEnvironment) ? fromEnvironment : DEFAULT_SEED;

/** How many times as many cases are tried as in the gate: `npm run proofs` asks for ten. */
export const thoroughness = Number(process.env['ETCHWRIGHT_PROOFS'] ?? 1);

/** Parameters of one chunk; chunks differ in seed only. */
export const chunk = (numRuns: number, part = 0) => ({
  numRuns: numRuns * thoroughness,
  seed: baseSeed + 7919 * part,
});

/** A seed for each batch of cases, so that a title names the seed that its cases came from. */
export const seeds = (batches: number, apart: number): readonly number[] =>
  Array.from({ length: batches * thoroughness }, (_, n) => baseSeed + apart * n);
