import type { Fault } from '../core/plan/fault.ts';
import { rememberingSolver } from '../core/cell/solved-field.ts';
import { parseJob } from '../core/plan/job-input.ts';
import type { Alternative } from '../core/plan/alternatives.ts';
import type { Influence } from '../core/plan/influence.ts';
import { planAsProposed, proposalFor } from '../core/plan/plan-job.ts';
import { alternativesFor, ammeterGainFor, influencesFor, trialFor } from '../core/plan/questions.ts';
import type { AmmeterGain } from '../core/plan/questions.ts';
import type { Trial, Trying } from '../core/plan/what-if.ts';
import type { Plan } from '../core/plan/plan.ts';

/** A job file as typed, and the same with stand-ins for blank fields. */
export interface Files {
  readonly typed: unknown;
  readonly filled: unknown;
}

/** The result of planning a draft. */
export interface Planned {
  /** null when even the file with stand-ins does not parse */
  readonly plan: Plan | null;
  /** what is wrong or missing; with any of these, the plan is only to look at */
  readonly faults: readonly Fault[];
}

const solve = rememberingSolver();

/** Plans a draft. Its bare area and later answers may still be missing. */
export function planDraft({ typed, filled }: Files): Planned {
  const strict = parseJob(typed, { areaLater: true });
  if ('job' in strict) return { plan: planAsProposed(strict.job, solve), faults: [] };
  const loose = parseJob(filled, { areaLater: true });
  return { plan: 'job' in loose ? planAsProposed(loose.job, solve) : null, faults: strict.faults };
}

/** Other ways to a draft's depth; none while the draft is incomplete. */
export function alternativesOf({ typed }: Files): readonly Alternative[] {
  const strict = parseJob(typed);
  return 'job' in strict ? alternativesFor(strict.job, solve) : [];
}

/** What an ammeter would change; null where there is one, or the draft is not whole. */
export function ammeterGainIn({ typed }: Files): AmmeterGain | null {
  const strict = parseJob(typed);
  return 'job' in strict ? ammeterGainFor(strict.job, solve) : null;
}

/** What changes a draft's depth, with the supply set as the plan proposes; none while the draft is incomplete. */
export function influencesIn({ typed }: Files): readonly Influence[] {
  const strict = parseJob(typed);
  if (!('job' in strict)) return [];
  const supply = proposalFor(strict.job, solve);
  return supply === null ? [] : influencesFor({ ...strict.job, supply }, solve);
}

/** What changes in a draft's plan when one value is tried; null while the draft is incomplete. */
export function trialIn({ typed }: Files, trying: Trying): Trial | null {
  const strict = parseJob(typed);
  if (!('job' in strict)) return null;
  const supply = proposalFor(strict.job, solve);
  return supply && trialFor({ ...strict.job, supply }, trying, solve);
}
