import type { Reading } from '../notebook/records.ts';
import type { Run } from '../procedure/machine.ts';

/** What a run goes by. */
export interface Target {
  /** amps that the plan expects until a reading says otherwise */
  readonly amps: number;
  /** A·h at which the wanted depth is reached */
  readonly chargeAh: number;
  /** minutes with current on, for those who cannot count charge */
  readonly minutes: number;
  readonly countsCharge: boolean;
}

const HOUR = 3_600_000;
const MINUTE = 60_000;

/** When a run's current ended, or now: until the meter read zero it may have flowed. */
const endOf = (run: Run, now: number): number => run.offAt ?? run.stoppedAt ?? now;

/** Time with current on so far, ms. */
export const energised = (runs: readonly Run[], now: number): number =>
  runs.reduce((sum, run) => sum + Math.max(0, endOf(run, now) - run.startedAt), 0);

/**
 * Charge so far, A·h. Inside a run the current goes straight from reading to reading; before the first
 * the first holds, after the last the last holds; a run without any goes by the amps before it.
 */
export function chargeSoFar(
  runs: readonly Run[],
  readings: readonly Reading[],
  target: Target,
  now: number,
): number {
  let amps = target.amps;
  let sum = 0;
  for (const run of runs) {
    const end = endOf(run, now);
    const taken = readings.filter(
      (reading): reading is Reading & { amps: number } =>
        reading.amps !== null && reading.at >= run.startedAt && reading.at <= end,
    );
    let [at, before] = [run.startedAt, taken[0]?.amps ?? amps];
    for (const reading of taken) {
      sum += ((before + reading.amps) / 2) * (reading.at - at);
      [at, before] = [reading.at, reading.amps];
    }
    sum += before * Math.max(0, end - at);
    amps = before;
  }
  return sum / HOUR;
}

/** The amps that are taken to flow now: the latest reading's, else the plan's. */
export const ampsNow = (readings: readonly Reading[], target: Target): number =>
  readings.findLast(({ amps }) => amps !== null)?.amps ?? target.amps;

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
    const goal = goalOf(target.minutes * MINUTE, energised(earlier(runs), now));
    return now + goal - energised(runs, now);
  }
  const goal = goalOf(target.chargeAh, chargeSoFar(earlier(runs), readings, target, now));
  return now + ((goal - chargeSoFar(runs, readings, target, now)) / amps) * HOUR;
}

/** What a reading means for the maker, gravest first; null when it is in order. */
export type ReadingAlarm = 'stop-hot' | 'warm' | 'amps-gone' | 'amps-jumped';

export function alarmOf(
  reading: Omit<Reading, 'at'>,
  target: Target,
  limits: { warn: number; stop: number },
): ReadingAlarm | null {
  const { celsius, amps } = reading;
  if (celsius !== null && celsius >= limits.stop) return 'stop-hot';
  if (amps !== null && amps > 1.5 * target.amps) return 'amps-jumped';
  if (amps !== null && amps < 0.5 * target.amps) return 'amps-gone';
  return celsius !== null && celsius >= limits.warn ? 'warm' : null;
}
