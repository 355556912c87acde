import { classBounds, classPack } from '../core/plan/class-pack.ts';
import { fromSi } from '../core/units/convert.ts';
import type { ClassAsked } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import type { Planner } from '../work/planner.ts';
import { draftFrom } from './draft.ts';
import type { Draft } from './draft.ts';
import { filledDraft, jobFileOf, typedNumber, unchosenIn } from './job-file.ts';
import tokens from '../../../static/examples/evening-class-tokens.json';

/** The answers that a new class starts with. */
export const usualClass: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };

/** Depth of a job file or draft is typed in mm here. */
const inMm = (um: number): number => Number((um / 1e3).toPrecision(6));

/** Depth that a plan is for, um. */
export const depthOf = (plan: Plan): number => fromSi(plan.job.piece.depth, 'um');

/** The example, with the depth that a class bites. */
const exampleWith = (um: number | null): object =>
  um === null ? tokens : { ...tokens, piece: { ...tokens.piece, depth: { value: inMm(um), unit: 'mm' } } };

/** A job's answers as a class has them: for teaching, each bath mixed for it, and the depth that it bites. */
const draftForClass = (draft: Draft, um: number | null): Draft => ({
  ...draft,
  'place.use': 'teaching',
  'bath.from': 'new',
  ...(um === null ? {} : { 'piece.depth': String(inMm(um)), 'piece.depth.unit': 'mm', 'piece.polish': '0' }),
});

async function planFrom(planner: Planner, draft: Draft): Promise<Plan | null> {
  if (unchosenIn(draft).length > 0) return null;
  const planned = await planner.plan({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) });
  return planned && planned.faults.length === 0 ? planned.plan : null;
}

/**
 * The plan for every station: a job of this notebook, planned for teaching whatever its own use is.
 * @param id of the job; empty for the example
 * @param um depth that the class bites; null for the job's own
 * @returns null for a job that is not there, cannot be read, or is not answered yet
 */
export async function classPlan(
  book: Notebook,
  planner: Planner,
  id: string,
  um: number | null = null,
): Promise<Plan | null> {
  if (id === '') {
    const example = exampleWith(um);
    return (await planner.plan({ typed: example, filled: example }))?.plan ?? null;
  }
  const record = await book.job(id);
  if (record === null || isUnreadable(record)) return null;
  return planFrom(planner, draftForClass(draftFrom(record.draft), um));
}

/** Depths tried before it is given up: another depth may get other amps, and so another time. */
const TRIES = 5;

/**
 * The plan at a depth that fits the evening, beginning at the one that the pack proposes.
 * @returns null when no depth is found
 */
export async function fittedPlan(
  book: Notebook,
  planner: Planner,
  id: string,
  asked: ClassAsked,
  um: number,
): Promise<{ readonly um: number; readonly plan: Plan } | null> {
  let depth = um;
  for (let tried = 0; tried < TRIES; tried += 1) {
    const plan = await classPlan(book, planner, id, depth);
    if (plan === null) return null;
    const { over, fittingDepth } = classPack(plan, asked);
    if (over === 0) return { um: depth, plan };
    if (fittingDepth === null) return null;
    depth = fittingDepth;
  }
  return null;
}

/** A typed number; null when it is not whole or outside its bounds. */
export function classNumber(which: keyof ClassAsked, typed: string): number | null {
  const number = typedNumber(typed);
  const [least, most] = classBounds[which];
  return typeof number === 'number' && Number.isInteger(number) && number >= least && number <= most
    ? number
    : null;
}
