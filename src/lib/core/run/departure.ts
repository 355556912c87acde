import { currentLimits, levelChanges } from './alarms.ts';
import { changes } from './change-of-level.ts';
import type { LevelChange, LevelShape } from './change-of-level.ts';
import { levelsOf } from './level.ts';
import type { Expected, Level } from './level.ts';
import type { Reading } from './run.ts';

/** Reasons why a run may differ from its plan. */
export type Cause = 'resist-lifts' | 'film' | 'clip-wet' | 'contact' | 'warm' | 'bridged';

/** A run that differs from its plan. */
export interface Departure {
  /** the most likely first */
  readonly causes: readonly Cause[];
  /** current per driving volt now, over that at first */
  readonly ratio: number;
}

/** Near its limit, a bath warmer than planned by more than this, in kelvin, is reported. */
const WARMER = 6;
const NEAR_LIMIT = 2;

const rising: Readonly<Record<LevelShape, readonly Cause[]>> = {
  step: ['clip-wet', 'resist-lifts'],
  ramp: ['resist-lifts', 'clip-wet'],
  runaway: ['bridged', 'resist-lifts'],
  decay: ['resist-lifts', 'clip-wet'],
  wander: ['contact', 'clip-wet'],
};
const falling: Readonly<Record<LevelShape, readonly Cause[]>> = {
  step: ['contact', 'film'],
  ramp: ['film', 'contact'],
  runaway: ['film', 'contact'],
  decay: ['film', 'contact'],
  wander: ['contact', 'film'],
};

/** A change so sudden that waiting for more readings would take too long. */
function suddenChange(levels: readonly Level[]): LevelChange | null {
  const [first, last] = [levels[0], levels.at(-1)];
  if (!first || !last || levelChanges(levels).length === 0) return null;
  return { shape: 'step', change: last.level - first.level };
}

const isTold = ({ shape, change }: LevelChange): boolean =>
  shape === 'wander' || Math.abs(change) >= currentLimits.changed;

/**
 * Whether a run differs from its plan, and the most likely causes. It is compared with its own first
 * readings, so that a cell slower than planned is not itself a departure.
 * @param readings of one run, oldest first
 * @returns null while all is well, or when there are too few readings to tell
 */
export function departureOf(readings: readonly Reading[], expected: Expected): Departure | null {
  const { limits, isSilver } = expected;
  const latest = readings.findLast(({ celsius }) => celsius !== null)?.celsius ?? null;
  const isWarm = latest !== null && latest >= limits.warn;
  const levels = levelsOf(readings, expected);
  const change = changes(levels);
  const found = change && isTold(change) ? change : suddenChange(levels);
  if (found) {
    const table = found.change > 0 && found.shape !== 'wander' ? rising : falling;
    const causes = table[found.shape].filter((cause) => cause !== 'bridged' || isSilver);
    return { causes: isWarm ? [...causes, 'warm'] : causes, ratio: Math.exp(found.change) };
  }
  const isWarmer =
    latest !== null && latest - expected.celsius >= WARMER && latest >= limits.warn - NEAR_LIMIT;
  return isWarm || isWarmer ? { causes: ['warm'], ratio: Math.exp(change?.change ?? 0) } : null;
}
