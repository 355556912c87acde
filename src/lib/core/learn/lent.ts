import { worth } from './rate.ts';
import type { Rate } from './rate.ts';
import { pooled } from './pooling.ts';

/** What jobs of other metals and salts suggest for a metal and salt. */
export interface Lent {
  /** mean of the logarithm of rate over table */
  readonly mean: number;
  readonly jobs: number;
}

/** Fewest jobs to use: one or two say more about themselves than about the set-up. */
const ENOUGH = 3;
/** A rate worth less than this share of a job is too inexact to use for other metals. */
const ROUGH = 0.3;

/**
 * How far a set-up may differ from the tables, and how metals and jobs vary around that: our judgement, as
 * logarithms.
 */
const COMMON = { mean: 0, spread: 0.15, between: 0.15, within: 0.1 } as const;

/**
 * What all jobs of a set-up have in common, whatever the metal: its meter, its clips, its way of weighing.
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
