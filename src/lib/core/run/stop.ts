import { HOUR, fromMinutes, toMinutes } from '../units/time.ts';
import type { Reading, Run, Target } from './run.ts';
import { ampsNow, chargeSoFar, energised } from './tally.ts';

/** Share of the target from which a further bite is a decision of its own. */
const DONE = 0.9;
/** What a further bite adds, as a share of the target. */
const FURTHER = 0.25;

/** Where this run ends: the target, or a quarter more when it had been reached before the run began. */
const goalOf = (target: number, before: number): number =>
  before >= DONE * target ? before + FURTHER * target : target;

const earlier = (runs: readonly Run[]): readonly Run[] => runs.filter(({ offAt }) => offAt !== null);

/**
 * When to stop, ms since 1970: where charge is counted, when the rest of it has passed at the latest amps;
 * else when the planned minutes are over. A further bite, asked for after the target, adds a quarter.
 */
export function stopAt(
  runs: readonly Run[],
  readings: readonly Reading[],
  target: Target,
  now: number,
): number {
  const amps = ampsNow(readings, target);
  // no current, no end in sight: the planned minutes stand
  if (!target.countsCharge || !(amps > 0)) {
    const goal = goalOf(fromMinutes(target.minutes), energised(earlier(runs), now));
    return now + goal - energised(runs, now);
  }
  const goal = goalOf(target.chargeAh, chargeSoFar(earlier(runs), readings, target, now));
  return now + ((goal - chargeSoFar(runs, readings, target, now)) / amps) * HOUR;
}

/** Longest stretch between two looks, min: resist lifts and baths warm by the clock, not by the share done. */
const LONGEST = 10;

/**
 * When the piece is next to be lifted and looked at: first as the plan says, then each time the time with
 * current on has doubled, ten minutes apart at most. Null when the run ends before.
 * @param firstLook min
 */
export function nextLook(runs: readonly Run[], firstLook: number, stop: number, now: number): number | null {
  const run = runs.at(-1);
  if (!run) return null;
  const before = toMinutes(energised(runs.slice(0, -1), now));
  const due = run.startedAt + fromMinutes(Math.max(firstLook, Math.min(before, LONGEST)));
  return due < stop ? due : null;
}

/** Amps and degrees are to be noted every so many minutes. */
const EVERY = 5;

/** When the next reading is due. */
export function nextReading(runs: readonly Run[], readings: readonly Reading[]): number | null {
  const run = runs.at(-1);
  return run ? Math.max(run.startedAt, readings.at(-1)?.at ?? 0) + fromMinutes(EVERY) : null;
}

/** Minutes left that are called out, the nearest first. */
const CALLS = [1, 5] as const;

/** Which of them has been passed last; null before the first, and when time is up. @param left ms */
export const minutesCalled = (left: number): (typeof CALLS)[number] | null =>
  left <= 0 ? null : (CALLS.find((minutes) => left <= fromMinutes(minutes)) ?? null);
