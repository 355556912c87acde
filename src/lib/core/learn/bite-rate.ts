import { RANGE_Z, rangeEnds } from '../units/range.ts';
import type { Lent } from './lent.ts';
import { nextOf, quantileOf, updated } from './mean.ts';
import type { Belief, Expectation } from './mean.ts';
import { rateLimits, worth } from './rate.ts';
import type { Rate } from './rate.ts';

/*
 * Normal–inverse-gamma on the logarithm of the rate, by metal family and anion (κ 1, a 1.5, b 0.012 about
 * the table's rate: a judgement). A job counts for what its gauge tells, 10 % scatter against what scale or
 * gauge may be off; what the eye alone judged counts a tenth of a job. A job that stands far off is asked
 * about and counted. On benches that we simulate the 90 % range holds 87 to 93 % of the next at every count,
 * and at least 70 % from two jobs on when the scatter is twice as large and one job in eight is off by half.
 * With a scatter of exactly 10 % it is too wide after none or one job (97 and 94 %).
 */

/** What is believed before any job, about the table's own rate; a judgement, no published value. */
const FIRST = { kappa: 1, a: 1.5, b: 0.012 } as const;
/** Deviations from what was expected beyond which a job is asked about. */
const DOUBTED = 3;

/** The belief after some jobs, each counted for what it is worth; in any order the same. */
export const beliefAfter = (table: number, rates: readonly Rate[]): Belief =>
  updated(
    { m: Math.log(table), ...FIRST },
    rates.map(({ rate }) => Math.log(rate)),
    rates.map(worth),
  );

export interface Learnt {
  /** the rate to plan with, as a share of Faraday's law */
  readonly median: number;
  /** standard deviation of its logarithm that has a range of the same width */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  readonly jobs: number;
  /** jobs of other metals and salts that were heard too */
  readonly lent: number;
  /** ids of jobs that the others would not have expected */
  readonly doubted: readonly string[];
}

const endsOf = (expected: Expectation) => ({
  low: quantileOf(expected, rangeEnds.low),
  high: quantileOf(expected, rangeEnds.high),
});
function spreadOf(expected: Expectation): number {
  const { low, high } = endsOf(expected);
  return (high - low) / (2 * RANGE_Z);
}

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

/**
 * The bite rate of this bench, from the table's and its own jobs.
 * @param lent what jobs of other metals and salts let one expect beforehand
 * @returns null before the first job of any
 */
export function learnt(table: number, rates: readonly Rate[], lent: Lent | null = null): Learnt | null {
  if (rates.length === 0 && !lent) return null;
  const expected = table * Math.exp(lent?.mean ?? 0);
  const next = nextOf(beliefAfter(expected, rates));
  const { low, high } = endsOf(next);
  return {
    median: Math.exp(next.location),
    spread: Math.min(rateLimits.widest, spreadOf(next)),
    low: Math.exp(low),
    high: Math.exp(high),
    jobs: rates.length,
    lent: lent?.jobs ?? 0,
    doubted: doubtedOf(expected, rates),
  };
}
