import type { Plan } from '../core/plan/plan.ts';
import { endToEnd, stretchesOf } from '../core/run/tally.ts';
import { toMinutes } from '../core/units/time.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import type { JobRecord } from '../notebook/records.ts';
import type { Planner } from '../work/planner.ts';
import { filledDraft, jobFileOf } from './job-file.ts';
import { draftFrom } from './draft.ts';
import { runsIn, soFar } from './run-log.ts';
import { summariesIn } from './job-summary.ts';

/** Amps against minutes with current on. */
export type Curve = readonly { readonly minutes: number; readonly amps: number }[];

/** One job of a comparison: run, or only planned. */
export interface ComparedSide {
  readonly id: string;
  readonly title: string;
  readonly plan: Plan;
  readonly hasRun: boolean;
  readonly curve: Curve;
  /** minutes with current on, as run or as planned */
  readonly minutes: number;
  readonly chargeAh: number;
  /** measured mean depth, um */
  readonly gotUm: number | null;
}

/** A plan has the same current until its end. */
const plannedCurve = (amps: number, minutes: number): Curve => [
  { minutes: 0, amps },
  { minutes, amps },
];

/** One side of a comparison. @param plan for a job that has not run, the plan of its present answers */
export function sideOf(record: JobRecord, plan: Plan): ComparedSide {
  const { id, draft, readings, result } = record;
  const own = { id, title: draft['title'] ?? '', plan, gotUm: result?.depthUm ?? null };
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  if (so.on === 0 || !so.target) {
    const [amps, minutes, charge] = (['current', 'run_time', 'charge'] as const).map(
      (figure) => plan.figures[figure]?.value ?? 0,
    ) as [number, number, number];
    return { ...own, hasRun: false, curve: plannedCurve(amps, minutes), minutes, chargeAh: charge };
  }
  const stretches = endToEnd(stretchesOf(so.runs, readings, so.target, record.updatedAt));
  const curve = stretches.flatMap(({ begin, end, amps }) => [
    { minutes: toMinutes(begin), amps: amps[0] },
    { minutes: toMinutes(end), amps: amps[1] },
  ]);
  return { ...own, hasRun: true, curve, minutes: toMinutes(so.on), chargeAh: so.chargeAh };
}

/** A job that may be chosen. */
export interface Choosable {
  readonly id: string;
  readonly title: string;
  /** ms since 1970 */
  readonly touchedAt: number;
}

export async function choosableIn(book: Notebook): Promise<readonly Choosable[]> {
  const summaries = await summariesIn(book);
  return summaries
    .map(({ id, title, touchedAt }) => ({ id, title, touchedAt }))
    .toSorted((a, b) => b.touchedAt - a.touchedAt);
}

/**
 * A job with its plan at its start, or with the plan of its present answers if it has not run.
 * @returns null for a job that does not exist, cannot be read, or cannot be planned
 */
export async function sideFor(book: Notebook, planner: Planner, id: string): Promise<ComparedSide | null> {
  const record = await book.job(id);
  if (record === null || isUnreadable(record)) return null;
  const draft = draftFrom(record.draft);
  const plan =
    (record.planAtStart as Plan | null) ??
    (await planner.plan({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) }))?.plan ??
    null;
  return plan && Object.keys(plan.figures).length > 0 ? sideOf(record, plan) : null;
}
