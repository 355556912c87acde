import type { Plan } from '../core/plan/plan.ts';
import type { Target } from '../core/run/run.ts';
import type { Reading } from '../notebook/records.ts';

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
