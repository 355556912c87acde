import { currentLimits, levelChanges } from './alarms.ts';
import { changes } from './change-of-level.ts';
import type { LevelChange, LevelShape } from './change-of-level.ts';
import { levelsOf } from './level.ts';
import type { Expected, Level } from './level.ts';
import type { Reading } from './run.ts';

/** What makes a run leave its plan. */
export type Cause = 'resist-lifts' | 'film' | 'clip-wet' | 'contact' | 'warm' | 'bridged';

/** A run that has left its plan. */
export interface Departure {
  /** likeliest first */
  readonly causes: readonly Cause[];
  /** what passes now for each volt that drives, over what passed at first */
  readonly ratio: number;
}

/** Kelvin by which a bath may be warmer than planned, near its limit, before that is said. */
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

/** A change too sudden to wait for more readings, which would make it sure. */
function suddenChange(levels: readonly Level[]): LevelChange | null {
  const [first, last] = [levels[0], levels.at(-1)];
  if (!first || !last || levelChanges(levels).length === 0) return null;
  return { shape: 'step', change: last.level - first.level };
}

const isTold = ({ shape, change }: LevelChange): boolean =>
  shape === 'wander' || Math.abs(change) >= currentLimits.changed;

/**
 * Whether a run leaves its plan, and what most likely makes it: measured against its own first readings, so
 * that a bench slower than planned is not held against it.
 * @param readings of one run, oldest first
 * @returns null while all is well, or too little has been read to tell
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
