import { HOUR, fromMinutes, toMinutes } from '../units/time.ts';
import type { Reading, Run, Target } from './run.ts';
import { ampsNow, chargeSoFar, energised } from './tally.ts';

/** From this share of the target on, the maker must decide on any further bite. */
const DONE = 0.9;
/** A further bite adds this share of the target. */
const FURTHER = 0.25;

/**
 * Charge or time at which this run ends: the target, or a quarter more if it was reached before the run
 * began.
 */
const goalOf = (target: number, before: number): number =>
  before >= DONE * target ? before + FURTHER * target : target;

const earlier = (runs: readonly Run[]): readonly Run[] => runs.filter(({ offAt }) => offAt !== null);

/**
 * When to stop, ms since 1970. If charge is counted, it is when the rest of it will have passed at the latest
 * amps; otherwise, when the planned minutes are over. A further bite, asked for after the target, adds a
 * quarter.
 */
export function stopAt(
  runs: readonly Run[],
  readings: readonly Reading[],
  target: Target,
  now: number,
): number {
  const amps = ampsNow(readings, target);
  // without current the charge would never be reached, so the planned minutes count
  if (!target.countsCharge || !(amps > 0)) {
    const goal = goalOf(fromMinutes(target.minutes), energised(earlier(runs), now));
    return now + goal - energised(runs, now);
  }
  const goal = goalOf(target.chargeAh, chargeSoFar(earlier(runs), readings, target, now));
  return now + ((goal - chargeSoFar(runs, readings, target, now)) / amps) * HOUR;
}

/**
 * Longest time between two looks, min. Resist lifts and baths warm with time, however much of the bite is
 * done.
 */
const LONGEST = 10;

/**
 * When to lift the piece next and look at it: first when the plan says, then each time the time with current
 * on has doubled, with at most ten minutes between looks. Null when the run ends before.
 * @param firstLook min
 */
export function nextLook(runs: readonly Run[], firstLook: number, stop: number, now: number): number | null {
  const run = runs.at(-1);
  if (!run) return null;
  const before = toMinutes(energised(runs.slice(0, -1), now));
  const due = run.startedAt + fromMinutes(Math.max(firstLook, Math.min(before, LONGEST)));
  return due < stop ? due : null;
}

/** Minutes between readings of amps and temperature. */
const EVERY = 5;

/** When the next reading is due. */
export function nextReading(runs: readonly Run[], readings: readonly Reading[]): number | null {
  const run = runs.at(-1);
  return run ? Math.max(run.startedAt, readings.at(-1)?.at ?? 0) + fromMinutes(EVERY) : null;
}

/** The remaining minutes that are announced, the smallest first. */
const CALLS = [1, 5] as const;

/** The latest announcement passed; null before the first, and when time is up. @param left ms */
export const minutesCalled = (left: number): (typeof CALLS)[number] | null =>
  left <= 0 ? null : (CALLS.find((minutes) => left <= fromMinutes(minutes)) ?? null);
