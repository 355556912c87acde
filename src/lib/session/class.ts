import { classBounds } from '../core/plan/class-pack.ts';
import type { ClassAsked } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import type { Planner } from '../work/planner.ts';
import { draftFrom } from './draft.ts';
import { filledDraft, jobFileOf, typedNumber } from './job-file.ts';
import tokens from '../../../static/examples/evening-class-tokens.json';

/** The answers that a new class starts with. */
export const usualClass: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };

/**
 * The plan for every station: a job of this notebook, planned for teaching whatever its own use is.
 * @param id of the job; empty for the example
 * @returns null for a job that does not exist, cannot be read, or is incomplete
 */
export async function classPlan(book: Notebook, planner: Planner, id: string): Promise<Plan | null> {
  if (id === '') return (await planner.plan({ typed: tokens, filled: tokens }))?.plan ?? null;
  const record = await book.job(id);
  if (record === null || isUnreadable(record)) return null;
  const draft = { ...draftFrom(record.draft), 'place.use': 'teaching' };
  const planned = await planner.plan({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) });
  return planned && planned.faults.length === 0 ? planned.plan : null;
}

/** A typed number; null when it is not whole or outside its bounds. */
export function classNumber(which: keyof ClassAsked, typed: string): number | null {
  const number = typedNumber(typed);
  const [least, most] = classBounds[which];
  return typeof number === 'number' && Number.isInteger(number) && number >= least && number <= most
    ? number
    : null;
}
