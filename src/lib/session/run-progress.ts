import type { Plan } from '../core/plan/plan.ts';
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
export const endOf = (run: Run, now: number): number => run.offAt ?? run.stoppedAt ?? now;

/** Time with current on so far, ms. */
export const energised = (runs: readonly Run[], now: number): number =>
  runs.reduce((sum, run) => sum + Math.max(0, endOf(run, now) - run.startedAt), 0);

/** A piece of a run in which the current goes straight from one value to another. */
export interface Stretch {
  /** ms since 1970 */
  readonly from: number;
  readonly to: number;
  /** A, at its beginning and at its end */
  readonly amps: readonly [number, number];
}

type AmpsReading = Reading & { amps: number };

/**
 * The current as it is taken to have flowed: inside a run straight from reading to reading; before the
 * first the first holds, after the last the last holds; a run without any goes by the amps before it.
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

/** Longest stretch between two looks, min: resist lifts and baths warm by the clock, not by the share done. */
const LONGEST = 10;

/**
 * When the piece is next to be lifted and looked at: first as the plan says, then each time the time with
 * current on has doubled, ten minutes apart at most. Null when the run ends before.
 * @param firstLook min
 */
export function nextLook(runs: readonly Run[], firstLook: number, stop: number, now: number): number | null {
  const run = runs.at(-1);
  if (!run) return null;
  const before = energised(runs.slice(0, -1), now) / MINUTE;
  const due = run.startedAt + Math.max(firstLook, Math.min(before, LONGEST)) * MINUTE;
  return due < stop ? due : null;
}

/** Amps and degrees are to be noted every so many minutes. */
const EVERY = 5;

/** When the next reading is due. */
export function nextReading(runs: readonly Run[], readings: readonly Reading[]): number | null {
  const run = runs.at(-1);
  return run ? Math.max(run.startedAt, readings.at(-1)?.at ?? 0) + EVERY * MINUTE : null;
}

export interface Spread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Half the 5 to 95 % band of the bare area: as typed, and as a share guessed by eye. */
const AREA = { area: 0.07, share: 0.13, later: 0.13 } as const;

/**
 * Mean depth that a loss of weight stands for, μm. It knows nothing of amps or time, so that it checks them.
 * @param loss g, of the whole batch
 * @param step smallest step of the scale, g
 */
export function depthByLoss(plan: Plan, loss: number, step: number): Spread | null {
  const { depth, mass_removed: mass } = plan.figures;
  if (!depth || !mass || !(mass.value > 0) || !(loss > 0)) return null;
  const perGram = depth.value / mass.value;
  const thickness = plan.job.piece.thickness * 1e6;
  const off = AREA[plan.job.piece.openAreaFrom];
  const most = (value: number): number => Math.min(Math.max(0, value), thickness);
  return {
    value: most(loss * perGram),
    low: most((loss - step) * perGram * (1 - off)),
    high: most((loss + step) * perGram * (1 + off)),
  };
}

/** What a reading means for the maker. */
export type ReadingAlarm = 'stop-hot' | 'volts-high' | 'amps-jumped' | 'amps-gone' | 'warm';

export interface ReadingLimits {
  /** °C */
  readonly warn: number;
  readonly stop: number;
  /** V from which nothing is run */
  readonly volts: number;
}

/**
 * What is out of order in a reading, gravest first. Amps are measured against what the run has shown so
 * far: a bench that is slower than planned from the start is told so once, and watched from there.
 * @param before readings of this run, oldest first
 */
export function alarmsOf(
  { celsius, amps, volts }: Omit<Reading, 'at'>,
  before: readonly Reading[],
  target: Target,
  limits: ReadingLimits,
): readonly ReadingAlarm[] {
  const shown = before.flatMap((reading) => (reading.amps === null ? [] : [reading.amps]));
  const alarms: ReadingAlarm[] = [];
  if (celsius !== null && celsius >= limits.stop) alarms.push('stop-hot');
  if (volts !== null && volts >= limits.volts) alarms.push('volts-high');
  if (amps !== null && amps > 1.5 * (shown[0] ?? target.amps)) alarms.push('amps-jumped');
  if (amps !== null && amps < 0.5 * Math.max(...(shown.length > 0 ? shown : [target.amps])))
    alarms.push('amps-gone');
  if (celsius !== null && celsius >= limits.warn && celsius < limits.stop) alarms.push('warm');
  return alarms;
}
