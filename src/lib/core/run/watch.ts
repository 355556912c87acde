import { alarmsOf } from './alarms.ts';
import type { ReadingAlarm } from './alarms.ts';
import { departureOf } from './departure.ts';
import type { Departure } from './departure.ts';
import type { Expected } from './level.ts';
import type { Reading } from './run.ts';

/** Everything that the readings of a run call for. */
export interface Watch {
  readonly departure: Departure | null;
  /** without those that the departure already covers */
  readonly alarms: readonly ReadingAlarm[];
}

/**
 * Alarms and departure together. A departure with more current replaces that alarm. The alarm for less
 * current stays beside it, because it warns of chlorine.
 * @param readings of one run, oldest first
 */
export function watchOf(readings: readonly Reading[], expected: Expected): Watch {
  const departure = departureOf(readings, expected);
  const isTold = departure !== null && departure.causes[0] !== 'warm' && departure.ratio > 1;
  return {
    departure,
    alarms: alarmsOf(readings, expected).filter((alarm) => alarm !== 'amps-jumped' || !isTold),
  };
}
