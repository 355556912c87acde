import { classBounds } from '../core/plan/class-pack.ts';
import type { ClassAsked } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import type { Planner } from '../work/planner.ts';
import { draftFrom } from './draft.ts';
import { filledDraft, jobFileOf, typedNumber } from './job-file.ts';
import tokens from '../../../static/examples/evening-class-tokens.json';

/** A class as it is asked for at first. */
export const usualClass: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };

/**
 * The plan of every station: a job of this notebook, planned for a class whatever it was planned for.
 * @param id of the job; empty for the example
 * @returns null for a job that is not there, cannot be read, or is not answered yet
 */
export async function classPlan(book: Notebook, planner: Planner, id: string): Promise<Plan | null> {
  if (id === '') return (await planner.plan({ typed: tokens, filled: tokens }))?.plan ?? null;
  const record = await book.job(id);
  if (record === null || isUnreadable(record)) return null;
  const draft = { ...draftFrom(record.draft), 'place.use': 'teaching' };
  const planned = await planner.plan({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) });
  return planned && planned.faults.length === 0 ? planned.plan : null;
}

/** What was typed for one answer; null for what is no whole number within its bounds. */
export function classNumber(which: keyof ClassAsked, typed: string): number | null {
  const number = typedNumber(typed);
  const [least, most] = classBounds[which];
  return typeof number === 'number' && Number.isInteger(number) && number >= least && number <= most
    ? number
    : null;
}
