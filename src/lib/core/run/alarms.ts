import { toMinutes } from '../units/time.ts';
import { levelsOf } from './level.ts';
import type { Expected, Level } from './level.ts';
import type { Reading } from './run.ts';

/** How far the current may move: the one set of limits for alarms, departures and what is said of chlorine. Our own reading. */
export const currentLimits = {
  /** over the first of a run: resist lifts, or the parts touch */
  jumped: 1.5,
  /** over the most of a run: a film, a loose clip, or the metal is used up */
  gone: 0.5,
  /** change of what passes for each volt, a logarithm, from which a departure is told */
  changed: 0.16,
  /** change of the same, as a share, below which its size is not told */
  told: 0.1,
} as const;

export type CurrentChange = 'jumped' | 'gone';

/**
 * Whether a current has jumped or gone: the rise against the first, so that a slow one is seen, the fall against the most.
 * @param before of the same run, oldest first, in the same unit
 * @param expected by the plan, which counts until something has been read
 */
export function currentChanges(
  now: number,
  before: readonly number[],
  expected: number,
): readonly CurrentChange[] {
  const shown = before.length > 0 ? before : [expected];
  const changed: CurrentChange[] = [];
  if (now > currentLimits.jumped * (shown[0] as number)) changed.push('jumped');
  if (now < currentLimits.gone * Math.max(...shown)) changed.push('gone');
  return changed;
}

/** Standard deviations that a change must stand out where volts were read: few volts that drive are read badly. */
const SURE = 3;

/** The same of what passes for each volt: it tells with the amps held, and when the knob was turned. */
export function levelChanges(levels: readonly Level[]): readonly CurrentChange[] {
  const last = levels.at(-1);
  const before = levels.slice(0, -1);
  if (!last || before.length === 0) return [];
  const isSure = ({ level, deviation, hasVolts }: Level): boolean =>
    !hasVolts || Math.abs(last.level - level) > SURE * Math.hypot(last.deviation, deviation);
  // a change that the meters' own error could explain does not count
  const seen = before.map((one) => Math.exp(isSure(one) ? one.level : last.level));
  return currentChanges(Math.exp(last.level), seen, NaN);
}

/** What a reading means for the maker. */
export type ReadingAlarm = 'stop-hot' | 'volts-high' | 'amps-jumped' | 'amps-gone' | 'warm';

/**
 * What is out of order in the latest reading, gravest first. Amps are measured against what the run has shown
 * so far: a bench that is slower than planned from the start is told so once, and watched from there.
 * @param readings of one run, oldest first
 */
export function alarmsOf(readings: readonly Reading[], expected: Expected): readonly ReadingAlarm[] {
  const latest = readings.at(-1);
  if (!latest) return [];
  const { celsius, amps, volts } = latest;
  const { limits } = expected;
  const shown = readings.slice(0, -1).flatMap((reading) => (reading.amps === null ? [] : [reading.amps]));
  const levels = levelsOf(readings, expected);
  const changed = [
    ...(amps === null ? [] : currentChanges(amps, shown, expected.amps)),
    // without volts it may be an older reading that has the last level
    ...(levels.at(-1)?.minutes === toMinutes(latest.at) ? levelChanges(levels) : []),
  ];
  const alarms: ReadingAlarm[] = [];
  if (celsius !== null && celsius >= limits.stop) alarms.push('stop-hot');
  if (volts !== null && volts >= limits.volts) alarms.push('volts-high');
  if (changed.includes('jumped')) alarms.push('amps-jumped');
  if (changed.includes('gone')) alarms.push('amps-gone');
  if (celsius !== null && celsius >= limits.warn && celsius < limits.stop) alarms.push('warm');
  return alarms;
}
