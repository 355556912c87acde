import { fromMinutes, toMinutes } from '../units/time.ts';
import type { Run } from './run.ts';
import { energised } from './tally.ts';

/** A window is due so much before its time is up: nobody lifts to the second, ms. */
const SLACK = 10_000;

/** A window of a strip: it is stopped out after so many minutes, until when the open ones take so many amps. */
interface Window {
  readonly minutes: number;
  readonly amps: number;
}

/** Where a strip stands. */
export interface StripStage {
  /** ms with current on so far */
  readonly on: number;
  /** the window that is bitten towards, from 0; null when all have had their time */
  readonly window: number | null;
  /** ms with current on until it is to be stopped out */
  readonly left: number;
  /** A, for the windows still open */
  readonly amps: number;
}

/** Where a strip stands by the clock of its current, whatever the pauses between. */
export function stripStage(windows: readonly Window[], runs: readonly Run[], now: number): StripStage {
  const on = energised(runs, now);
  const at = windows.findIndex(({ minutes }) => fromMinutes(minutes) > on + SLACK);
  const window = windows[at];
  return window
    ? { on, window: at, left: fromMinutes(window.minutes) - on, amps: window.amps }
    : { on, window: null, left: 0, amps: 0 };
}

/**
 * How long each window was really bitten, by the pauses in which it was stopped out: min; null for one that is open.
 * @param runs ended ones
 */
export function bittenMinutes(windows: readonly Window[], runs: readonly Run[]): readonly (number | null)[] {
  const ends = runs.map((_, n) => energised(runs.slice(0, n + 1), Infinity));
  return windows.map(({ minutes }) => {
    const end = ends.find((on) => on + SLACK >= fromMinutes(minutes));
    return end === undefined ? null : Number(toMinutes(end).toPrecision(4));
  });
}
