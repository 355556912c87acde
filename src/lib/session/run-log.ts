import type { Plan } from '../core/plan/plan.ts';
import { targetOf } from '../core/plan/run-by-plan.ts';
import { depthByCharge } from '../core/run/depth.ts';
import type { DepthSpread } from '../core/run/depth.ts';
import type { Reading, Run, Target } from '../core/run/run.ts';
import { stopAt } from '../core/run/stop.ts';
import { chargeSoFar, endOf, energised } from '../core/run/tally.ts';
import { fromMinutes } from '../core/units/time.ts';
import type { JobRecord } from '../notebook/records.ts';
import type { ProcedureContext } from '../procedure/machine.ts';

/** Why Stop was pressed. It is stored with the event. */
export type StopReason = 'done' | 'look' | 'wrong';

export interface Stop {
  readonly why: StopReason | 'page-went';
  /** id of what looked wrong */
  readonly symptom: string | null;
}

type Events = JobRecord['events'];

const timeOf = (event: Events[number]): number => (typeof event['at'] === 'number' ? event['at'] : 0);
const reasons: readonly unknown[] = ['done', 'look', 'wrong'] satisfies StopReason[];

/** Whether an event says, after the page was away, that current no longer flows, or that nobody knows. */
const isSeenOff = (event: Events[number]): boolean => event.type === 'supply.seen' && event['says'] !== 'on';

/** How the present or last run was stopped; null before the first. */
export function lastStop(events: Events): Stop | null {
  const started = events.findLastIndex(({ type }) => type === 'start.pressed');
  if (started < 0) return null;
  const since = events.slice(started + 1);
  const event = since.find(
    (one) => one.type === 'stop.pressed' || isSeenOff(one) || one.type === 'meter.read',
  );
  // older versions counted the closing of the page as the stop
  if (!event || event.type === 'meter.read')
    return since.some(({ type }) => type === 'job.restored') ? { why: 'page-went', symptom: null } : null;
  if (event.type === 'supply.seen') return { why: 'page-went', symptom: null };
  return {
    why: reasons.includes(event['why']) ? (event['why'] as StopReason) : 'done',
    symptom: typeof event['symptom'] === 'string' ? event['symptom'] : null,
  };
}

/** When the last run began, if no reading of zero has ended it; otherwise null. */
export function unendedSince(events: Events): number | null {
  const last = events.findLast(
    (event) =>
      event.type === 'start.pressed' ||
      event.type === 'strip.started' ||
      (event.type === 'meter.read' && event['reading'] === 'zero'),
  );
  return last && last.type !== 'meter.read' ? timeOf(last) : null;
}

/**
 * The earliest time at which a run's current may have ended: when Stop was pressed, or the last event before
 * the page was gone. The latest is when the meter was read at zero.
 */
export function earliestOff(run: Run, events: Events, readings: readonly Reading[], now: number): number {
  const end = endOf(run, now);
  const stopped = run.stoppedAt ?? end;
  const isOfRun = (event: Events[number]): boolean =>
    timeOf(event) >= run.startedAt && timeOf(event) <= stopped;
  const isFoundOut = events.some(
    (event) => (event.type === 'job.restored' || isSeenOff(event)) && timeOf(event) === stopped,
  );
  if (!isFoundOut) return Math.max(run.startedAt, Math.min(stopped, end));
  // the page was gone from the first return that was not answered with "on"
  const lastOn = events.findLastIndex(
    (event) => isOfRun(event) && event.type === 'supply.seen' && !isSeenOff(event),
  );
  const back = events.find((event, n) => n > lastOn && isOfRun(event) && event.type === 'job.restored');
  const gone = back === undefined ? stopped : timeOf(back);
  const heard = [...events, ...readings.map(({ at }) => ({ type: 'reading', at }))]
    .map(timeOf)
    .filter((at) => at >= run.startedAt && at < gone);
  return Math.max(run.startedAt, ...heard);
}

/** The runs in a record; none where it has no snapshot, or one of another version. */
export function runsIn({ snapshot }: JobRecord): readonly Run[] {
  const stored = snapshot as { readonly context?: Partial<ProcedureContext> } | null;
  return stored?.context?.runs ?? [];
}

/** Runs with the time of switching off that the maker remembers, where it differs. */
export const correctedRuns = (
  runs: readonly Run[],
  switchedOff: JobRecord['switchedOff'] = {},
): readonly Run[] => runs.map((run) => ({ ...run, offAt: switchedOff[String(run.startedAt)] ?? run.offAt }));

/** The maker is asked only if the time of switching off is uncertain by more than this, ms. */
const DOUBT = fromMinutes(2);

/** The earliest and latest time at which the supply of a run went off. */
export interface Doubt {
  readonly run: Run;
  readonly earliest: number;
  readonly latest: number;
  /** the planned stop, if it is between them */
  readonly planned: number | null;
}

/** The last run, when its time of switching off is uncertain and the maker has not told it. */
export function runInDoubt(record: JobRecord, runs: readonly Run[], target: Target | null): Doubt | null {
  const run = runs.at(-1);
  if (!run?.offAt || record.switchedOff?.[String(run.startedAt)] !== undefined) return null;
  const earliest = earliestOff(run, record.events, record.readings, run.offAt);
  const latest = run.offAt;
  if (latest - earliest <= DOUBT) return null;
  const going = [...runs.slice(0, -1), { ...run, stoppedAt: null, offAt: null }];
  const corrected = correctedRuns(going, record.switchedOff);
  const planned = target ? stopAt(corrected, record.readings, target, earliest) : null;
  const isBetween = planned !== null && planned > earliest && planned < latest;
  return { run, earliest, latest, planned: isBetween ? planned : null };
}

/** The job so far, compared with the plan at its start. */
export interface SoFar {
  readonly plan: Plan | null;
  readonly target: Target | null;
  /** with the maker's corrections */
  readonly runs: readonly Run[];
  /** ms with current on */
  readonly on: number;
  readonly chargeAh: number;
  /** less than `chargeAh` when the end of a run is uncertain */
  readonly leastChargeAh: number;
  /** ms since 1970 */
  readonly stop: number;
  /** mean depth from that charge, μm */
  readonly depth: DepthSpread | null;
}

export function soFar(record: JobRecord, runs: readonly Run[], plan: Plan | null, now: number): SoFar {
  const stood = (record.planAtStart as Plan | null) ?? plan;
  const target = targetOf(stood);
  const corrected = correctedRuns(runs, record.switchedOff);
  const on = energised(corrected, now);
  if (!target)
    return {
      plan: stood,
      target,
      runs: corrected,
      on,
      chargeAh: 0,
      leastChargeAh: 0,
      stop: now,
      depth: null,
    };
  const chargeOf = (some: readonly Run[]): number => chargeSoFar(some, record.readings, target, now);
  const chargeAh = chargeOf(corrected);
  const least = corrected.map((run) =>
    run.offAt === null || record.switchedOff?.[String(run.startedAt)] !== undefined
      ? run
      : { ...run, offAt: earliestOff(run, record.events, record.readings, now) },
  );
  const leastChargeAh = chargeOf(least);
  const depth = stood?.figures.depth;
  return {
    plan: stood,
    target,
    runs: corrected,
    on,
    chargeAh,
    leastChargeAh,
    stop: stopAt(corrected, record.readings, target, now),
    depth: depth ? depthByCharge(depth, target, leastChargeAh, chargeAh) : null,
  };
}
