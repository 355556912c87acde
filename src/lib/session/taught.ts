import type { Learnt } from '../core/learn/bite-rate.ts';
import type { LearntCell } from '../core/learn/cell-line.ts';
import type { Bench } from '../core/plan/job-input.ts';
import type { JobRecord } from '../notebook/records.ts';
import { cellFor, learntFor } from './bench-rates.ts';
import type { BenchRates } from './bench-rates.ts';
import type { Draft } from './draft.ts';
import { stripRateFor } from './strip.ts';

/** What this bench has taught of a job's metal and salt; null for what it has not. */
export interface Taught {
  readonly rate: Learnt | null;
  readonly cell: LearntCell | null;
}

export function taughtFor(rates: BenchRates, draft: Draft): Taught {
  const { strip, 'piece.metal': metal, 'bath.salt': salt } = draft;
  return {
    rate: learntFor(rates, metal, salt, stripRateFor(strip, metal, salt)),
    cell: cellFor(rates, metal, salt),
  };
}

/** What is known of a bench in a job file: what is not known is left out. */
const inFile = ({ biteRate, cell }: Partial<Bench>): { bench?: object } =>
  biteRate || cell ? { bench: { ...(biteRate ? { biteRate } : {}), ...(cell ? { cell } : {}) } } : {};

/**
 * The job file's word on this bench. A job that has begun keeps what it began with.
 * @param taught null where the maker wants the tables alone
 */
export function benchIn({ planAtStart }: JobRecord, taught: Taught | null): { bench?: object } {
  // a plan of another version, or from any hand, may have another shape
  const begun = planAtStart as { readonly job?: { readonly bench?: Partial<Bench> | null } } | null;
  if (begun) return inFile(begun.job?.bench ?? {});
  if (!taught) return {};
  const { rate, cell } = taught;
  return inFile({
    biteRate: rate && { median: rate.median, spread: rate.spread, jobs: rate.jobs + rate.lent },
    cell,
  });
}
