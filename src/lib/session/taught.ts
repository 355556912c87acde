import type { Learnt } from '../core/learn/bite-rate.ts';
import type { LearntCell } from '../core/learn/cell-line.ts';
import type { Bench } from '../core/plan/job-input.ts';
import type { JobRecord } from '../notebook/records.ts';
import { cellFor, learntFor, paceFor } from './bench-rates.ts';
import type { BenchRates } from './bench-rates.ts';
import type { Draft } from './draft.ts';
import { stripRateFor } from './strip.ts';

/** What earlier jobs show about a job's metal and salt; null where they show nothing. */
export interface Taught {
  readonly rate: Learnt | null;
  readonly cell: LearntCell | null;
  /** of jobs without an ammeter */
  readonly pace: Learnt | null;
}

export function taughtFor(rates: BenchRates, draft: Draft): Taught {
  const { strip, 'piece.metal': metal, 'bath.salt': salt } = draft;
  return {
    rate: learntFor(rates, metal, salt, stripRateFor(strip, metal, salt)),
    cell: cellFor(rates, metal, salt),
    pace: paceFor(rates, metal, salt),
  };
}

/** The job file's part for it. Unknown values are left out. */
function inFile(known: Partial<Bench>): { bench?: object } {
  const told = Object.entries(known).filter(([, value]) => value !== null);
  return told.length > 0 ? { bench: Object.fromEntries(told) } : {};
}

const asBelief = (one: Learnt | null) =>
  one && { median: one.median, spread: one.spread, jobs: one.jobs + one.lent };

/**
 * The part of the job file with what earlier jobs show. A job that has begun keeps the values it began with.
 * @param taught null if the maker wants the tables alone
 */
export function benchIn({ planAtStart }: JobRecord, taught: Taught | null): { bench?: object } {
  // a plan from another version, or from anybody, may have another shape
  const begun = planAtStart as { readonly job?: { readonly bench?: Partial<Bench> | null } } | null;
  if (begun) return inFile(begun.job?.bench ?? {});
  if (!taught) return {};
  const { rate, cell, pace } = taught;
  return inFile({ biteRate: asBelief(rate), cell, pace: asBelief(pace) });
}
