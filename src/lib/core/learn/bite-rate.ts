import { nextOf, quantileOf } from './mean.ts';
import type { Belief, Expectation } from './mean.ts';

/** How a bite was measured: the surer, the more it counts. */
export type Way = 'mass' | 'depth' | 'strip';

/** A finished job's bite rate: what came off over what Faraday's law gives. */
export interface Rate {
  readonly id: string;
  readonly rate: number;
  readonly way: Way;
  /** of the rate, as a share: what the scale or the gauge may be off */
  readonly off: number;
}

/** Rates, as shares of Faraday's law, and scatters that can be: what lies beyond was noted wrong, and teaches nothing. */
export const rateLimits = { least: 0.05, most: 3, widest: 2 } as const;

export const canBe = ({ rate, off }: Rate): boolean =>
  rate >= rateLimits.least && rate <= rateLimits.most && off >= 0 && Number.isFinite(off);

/** Scatter of one maker's jobs that is usual, as a share. */
const USUAL = 0.1;
/** What is believed before any job, about the table's own rate; a judgement, no published value. */
const FIRST = { kappa: 1, a: 1.5, b: 0.012 } as const;
/** Deviations from what was expected beyond which a job is asked about. */
const DOUBTED = 3;

/** How much of a job a measurement is worth: what a sure one would tell, less what its gauge hides. */
const worth = ({ off }: Rate): number => USUAL ** 2 / (USUAL ** 2 + off ** 2);

/** The belief after some jobs, each counted for what it is worth; in any order the same. */
export function beliefAfter(table: number, rates: readonly Rate[]): Belief {
  const { kappa, a, b } = FIRST;
  const m = Math.log(table);
  const weights = rates.map(worth);
  const count = weights.reduce((sum, one) => sum + one, 0);
  if (count === 0) return { m, kappa, a, b };
  const values = rates.map(({ rate }) => Math.log(rate));
  const mean = values.reduce((sum, value, n) => sum + (weights[n] as number) * value, 0) / count;
  const squares = values.reduce((sum, value, n) => sum + (weights[n] as number) * (value - mean) ** 2, 0);
  return {
    m: (kappa * m + count * mean) / (kappa + count),
    kappa: kappa + count,
    a: a + count / 2,
    b: b + squares / 2 + (kappa * count * (mean - m) ** 2) / (2 * (kappa + count)),
  };
}

export interface Learnt {
  /** the rate to plan with, as a share of Faraday's law */
  readonly median: number;
  /** standard deviation of its logarithm that has the same 5 and 95 % */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  readonly jobs: number;
  /** ids of jobs that the others would not have expected */
  readonly doubted: readonly string[];
}

const Z95 = 1.645;
const spreadOf = (expected: Expectation): number =>
  (quantileOf(expected, 0.95) - quantileOf(expected, 0.05)) / (2 * Z95);

/** Jobs that stand too far from what all the others let one expect: to be asked about, not left out. */
function doubtedOf(table: number, rates: readonly Rate[]): readonly string[] {
  if (rates.length < 3) return [];
  return rates
    .filter((one) => {
      const expected = nextOf(
        beliefAfter(
          table,
          rates.filter((other) => other !== one),
        ),
      );
      return Math.abs(Math.log(one.rate) - expected.location) > DOUBTED * spreadOf(expected);
    })
    .map(({ id }) => id);
}

/** The bite rate of this bench, from the table's and its own jobs; null before the first. */
export function learnt(table: number, rates: readonly Rate[]): Learnt | null {
  if (rates.length === 0) return null;
  const next = nextOf(beliefAfter(table, rates));
  return {
    median: Math.exp(next.location),
    spread: Math.min(rateLimits.widest, spreadOf(next)),
    low: Math.exp(quantileOf(next, 0.05)),
    high: Math.exp(quantileOf(next, 0.95)),
    jobs: rates.length,
    doubted: doubtedOf(table, rates),
  };
}
