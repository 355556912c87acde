import { worth } from './rate.ts';
import type { Rate } from './rate.ts';
import { pooled } from './pooling.ts';

/** What jobs of other metals and salts let one expect of a metal and salt. */
export interface Lent {
  /** of the logarithm, over the table's */
  readonly mean: number;
  readonly jobs: number;
}

/** Jobs of others that are heard: one or two say more of themselves than of the bench. */
const ENOUGH = 3;
/** A rate worth less of a job than this is too rough to be lent. */
const ROUGH = 0.3;

/** A bench's own way about the tables, and how metals and jobs differ about it: judgements, as logarithms. */
const COMMON = { mean: 0, spread: 0.15, between: 0.15, within: 0.1 } as const;

/**
 * What is common to a bench, whatever the metal: its meter, its clips, its habits of weighing.
 * @param groups other metals and salts, with the table's rate of each
 * @returns null before three jobs
 */
export function lentBy(
  groups: readonly { readonly table: number; readonly rates: readonly Rate[] }[],
): Lent | null {
  const heard = groups
    .map(({ table, rates }) => ({
      values: rates.filter((rate) => worth(rate) >= ROUGH).map(({ rate }) => Math.log(rate / table)),
    }))
    .filter(({ values }) => values.length > 0);
  const jobs = heard.reduce((sum, { values }) => sum + values.length, 0);
  return jobs < ENOUGH ? null : { mean: pooled(heard, COMMON).other.mean, jobs };
}
