import { fromMinutes, toMinutes } from '../units/time.ts';
import type { Run } from './run.ts';
import { energised } from './tally.ts';

/** A window counts as due this long before its time is up, ms: nobody lifts a strip to the second. */
const SLACK = 10_000;

/**
 * A window of a test strip: the minutes after which it is stopped out, and the amps for the windows open
 * until then.
 */
interface Window {
  readonly minutes: number;
  readonly amps: number;
}

/** The progress of a test strip. */
export interface StripStage {
  /** ms with current on so far */
  readonly on: number;
  /** index of the next window to stop out; null when all are done */
  readonly window: number | null;
  /** ms with current on until that window is due */
  readonly left: number;
  /** A for the windows that are still open */
  readonly amps: number;
}

/** How far a test strip has come. Only time with current on counts, so pauses do not matter. */
export function stripStage(windows: readonly Window[], runs: readonly Run[], now: number): StripStage {
  const on = energised(runs, now);
  const at = windows.findIndex(({ minutes }) => fromMinutes(minutes) > on + SLACK);
  const window = windows[at];
  return window
    ? { on, window: at, left: fromMinutes(window.minutes) - on, amps: window.amps }
    : { on, window: null, left: 0, amps: 0 };
}

/**
 * How long each window was bitten, min, from the pauses in which it was stopped out; null for one that is
 * open.
 * @param runs ended ones
 */
export function bittenMinutes(windows: readonly Window[], runs: readonly Run[]): readonly (number | null)[] {
  const ends = runs.map((_, n) => energised(runs.slice(0, n + 1), Infinity));
  return windows.map(({ minutes }) => {
    const end = ends.find((on) => on + SLACK >= fromMinutes(minutes));
    return end === undefined ? null : Number(toMinutes(end).toPrecision(4));
  });
}
