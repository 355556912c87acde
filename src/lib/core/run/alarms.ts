import { toMinutes } from '../units/time.ts';
import { levelsOf } from './level.ts';
import type { Expected, Level } from './level.ts';
import type { Reading } from './run.ts';

/**
 * How far the current may change. Alarms, departures and the texts about chlorine all use these limits. They
 * are our own estimates.
 */
export const currentLimits = {
  /** times the first current of a run: resist lifts, or the parts touch */
  jumped: 1.5,
  /** times the highest current of a run: a film, a loose clip, or the metal is used up */
  gone: 0.5,
  /** change of the current per driving volt, a logarithm, from which a departure is reported */
  changed: 0.16,
  /** the size of a change below this share is not shown */
  told: 0.1,
} as const;

export type CurrentChange = 'jumped' | 'gone';

/**
 * Whether a current has risen or fallen too far. A rise is compared with the first reading, so that a slow
 * one is noticed too, a fall with the highest.
 * @param before of the same run, oldest first, in the same unit
 * @param expected by the plan; used until there is a reading
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

/**
 * How many standard deviations a change must exceed when volts were read: small driving voltages are read
 * inexactly.
 */
const SURE = 3;

/**
 * The same for the current per driving volt. It shows a change even when the amps are held or the knob was
 * turned.
 */
export function levelChanges(levels: readonly Level[]): readonly CurrentChange[] {
  const last = levels.at(-1);
  const before = levels.slice(0, -1);
  if (!last || before.length === 0) return [];
  const isSure = ({ level, deviation, hasVolts }: Level): boolean =>
    !hasVolts || Math.abs(last.level - level) > SURE * Math.hypot(last.deviation, deviation);
  // ignore changes that the error of the meters could explain
  const seen = before.map((one) => Math.exp(isSure(one) ? one.level : last.level));
  return currentChanges(Math.exp(last.level), seen, NaN);
}

/** Alarms that a reading can raise. */
export type ReadingAlarm = 'stop-hot' | 'volts-high' | 'amps-jumped' | 'amps-gone' | 'warm';

/**
 * The alarms of the latest reading, the most serious first. Amps are compared with the run so far: a cell
 * that takes less than planned from the start raises its alarm once and is then compared with itself.
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
    // the last level may belong to an older reading, when the latest has no volts
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
