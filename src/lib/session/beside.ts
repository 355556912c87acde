import { adjusted } from '../core/plan/adjust.ts';
import type { Adjustment } from '../core/plan/adjust.ts';
import type { FigureId } from '../core/plan/outcome.ts';
import type { Plan } from '../core/plan/plan.ts';
import { meanAmps } from '../core/run/tally.ts';
import { converted } from '../core/units/convert.ts';
import type { Figure } from '../core/units/figure.ts';
import { toMinutes } from '../core/units/time.ts';
import type { JobRecord, Result } from '../notebook/records.ts';
import { checkBasisOf } from '../procedure/check-basis.ts';
import { NOTHING } from '../procedure/freshness.ts';
import type { AnswerChange } from '../procedure/freshness.ts';
import { runsIn, soFar } from './run-log.ts';
import type { SoFar } from './run-log.ts';

/** The job that this one was copied from, as it was run. */
export interface Earlier {
  readonly title: string;
  readonly plan: Plan;
  /** what to change from there; null when the depth was as wanted, or was not measured */
  readonly next: NextTime | null;
}

/** A measured and a wanted depth, μm, and what would have reached it. */
export interface NextTime extends Adjustment {
  readonly gotUm: number;
  readonly wantedUm: number;
  /** minutes that gave the measured depth */
  readonly atMinutes: number;
}

/** A depth within this share of the wanted one counts as reached. */
const NEAR = 0.05;

/** Figures by which jobs are compared. */
const compared: readonly FigureId[] = ['current', 'volts', 'run_time', 'charge', 'depth'];

export interface Row {
  readonly id: FigureId;
  readonly before: Figure | null;
  readonly now: Figure | null;
}

/** The job that a copy was made from; null when it never ran. */
export function earlierOf(record: JobRecord | null): Earlier | null {
  if (record === null || record.planAtStart === null) return null;
  const plan = record.planAtStart as Plan;
  const so = soFar(record, runsIn(record), plan, record.updatedAt);
  return { title: record.draft['title'] ?? '', plan, next: nextTime(plan, record.result, so) };
}

/** Every answer that differs between two plans, in SI. */
export function changesFrom(earlier: Plan, now: Plan): readonly AnswerChange[] {
  const before = checkBasisOf(earlier).inputs;
  const after = checkBasisOf(now).inputs;
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter((path) => (before[path] ?? NOTHING) !== (after[path] ?? NOTHING))
    .map((path) => ({ path, before: before[path] ?? null, after: after[path] ?? null }));
}

/** Old and new figures in rows, without those that neither plan has. */
export const besides = (earlier: Plan, now: Plan): readonly Row[] =>
  compared
    .map((id) => ({ id, before: earlier.figures[id] ?? null, now: now.figures[id] ?? null }))
    .filter(({ before, now: after }) => before !== null || after !== null);

/**
 * What to change next time, from the measured depth; null when it was not measured, or was as wanted.
 * @param on ms with current on
 * @param chargeAh counted during that time
 */
export function nextTime(
  plan: Plan,
  result: Result | null,
  { on, chargeAh }: Pick<SoFar, 'on' | 'chargeAh'>,
): NextTime | null {
  const wantedUm = converted(plan.job.piece.depth, 'm', 'um');
  const minutes = toMinutes(on);
  const gotUm = result?.depthUm ?? null;
  if (gotUm === null || Math.abs(gotUm - wantedUm) <= NEAR * wantedUm) return null;
  const change = adjusted({ gotUm, wantedUm, minutes, amps: meanAmps(chargeAh, on) }, plan);
  return change && { ...change, wantedUm, gotUm, atMinutes: minutes };
}
