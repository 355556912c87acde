import { HOUR } from '../units/time.ts';
import type { Reading, Run, Target } from './run.ts';

/** When a run's current ended, or now. Until the supply was seen to be off, current may have flowed. */
export const endOf = (run: Run, now: number): number => run.offAt ?? run.stoppedAt ?? now;

/** Time with current on so far, ms. */
export const energised = (runs: readonly Run[], now: number): number =>
  runs.reduce((sum, run) => sum + Math.max(0, endOf(run, now) - run.startedAt), 0);

/** A part of a run in which the current changes in a straight line. */
export interface Stretch {
  /** ms since 1970 */
  readonly from: number;
  readonly to: number;
  /** A at its beginning and at its end */
  readonly amps: readonly [number, number];
}

type AmpsReading = Reading & { amps: number };

/**
 * The current as we assume it flowed. Within a run it goes straight from reading to reading; before the first
 * reading and after the last it is constant. A run without readings has the amps of the run before it.
 */
export function stretchesOf(
  runs: readonly Run[],
  readings: readonly Reading[],
  target: Target,
  now: number,
): readonly Stretch[] {
  let held = target.amps;
  return runs.flatMap((run) => {
    const end = Math.max(run.startedAt, endOf(run, now));
    const taken = readings.filter(
      (reading): reading is AmpsReading =>
        reading.amps !== null && reading.at >= run.startedAt && reading.at <= end,
    );
    const pieces: Stretch[] = [];
    let [at, before] = [run.startedAt, taken[0]?.amps ?? held];
    for (const reading of taken) {
      pieces.push({ from: at, to: reading.at, amps: [before, reading.amps] });
      [at, before] = [reading.at, reading.amps];
    }
    pieces.push({ from: at, to: end, amps: [before, before] });
    held = before;
    return pieces;
  });
}

/** Charge so far, A·h: the area under the stretches. */
export const chargeSoFar = (
  runs: readonly Run[],
  readings: readonly Reading[],
  target: Target,
  now: number,
): number =>
  stretchesOf(runs, readings, target, now).reduce(
    (sum, { from, to, amps: [a, b] }) => sum + (((a + b) / 2) * (to - from)) / HOUR,
    0,
  );

/** The amps that we assume flow now: the latest reading, or else the plan's. */
export const ampsNow = (readings: readonly Reading[], target: Target): number =>
  readings.findLast(({ amps }) => amps !== null)?.amps ?? target.amps;

/** A stretch on a time axis without pauses, ms with current on since the first start. */
export interface PlacedStretch extends Stretch {
  readonly begin: number;
  readonly end: number;
}

/** Puts stretches on that axis, one after another. */
export function endToEnd(stretches: readonly Stretch[]): readonly PlacedStretch[] {
  let at = 0;
  return stretches.map((stretch) => {
    const begin = at;
    at += stretch.to - stretch.from;
    return { ...stretch, begin, end: at };
  });
}

/** Mean current of a charge, A; 0 before any. @param on ms with current on */
export const meanAmps = (chargeAh: number, on: number): number => (on > 0 ? (chargeAh * HOUR) / on : 0);

/** A difference below this share, from not knowing when a run ended, is not shown. */
const SHOWN = 0.05;

/** Whether the least and the most charge that may have flowed, A·h, differ enough to show both. */
export const isSpread = (least: number, most: number): boolean => least < (1 - SHOWN) * most;
