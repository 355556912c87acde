import type { Fault } from '../core/plan/fault.ts';
import { parseJob } from '../core/plan/job-input.ts';
import { planJob } from '../core/plan/plan-job.ts';
import type { Plan } from '../core/plan/plan.ts';

/** A job file as typed, and the same with stand-ins where nothing has been typed yet. */
export interface Files {
  readonly typed: unknown;
  readonly filled: unknown;
}

/** What comes of a draft. */
export interface Planned {
  /** null when even the filled file does not parse */
  readonly plan: Plan | null;
  /** what is still wrong or missing; with any of these the plan is only good for looking */
  readonly faults: readonly Fault[];
}

/** Plans a draft whose bare area and later answers may still be open. */
export function planDraft({ typed, filled }: Files): Planned {
  const strict = parseJob(typed, { areaLater: true });
  if ('job' in strict) return { plan: planJob(strict.job), faults: [] };
  const loose = parseJob(filled, { areaLater: true });
  return { plan: 'job' in loose ? planJob(loose.job) : null, faults: strict.faults };
}
