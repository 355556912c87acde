import { riseAfter, timeToRise } from '../chemistry/heat.ts';
import type { Thermal } from '../chemistry/heat.ts';
import { si } from '../units/quantity.ts';
import type { Charge, Duration } from '../units/quantity.ts';
import type { OperatingPoint } from './operating-point.ts';

/** A cell whose bath warms during the run, so that it conducts better. */
export interface WarmingCell extends Thermal {
  /** volts and amps when the bath is this many kelvin warmer than at the start */
  readonly pointAt: (rise: number) => OperatingPoint;
}

/** Result of a run. */
export interface Ran {
  readonly charge: Charge;
  readonly time: Duration;
  /** K above the start */
  readonly rise: number;
}

/**
 * Number of steps in a run. Power changes by a few per cent over a run, and each step is exact for the power
 * at its middle: four steps are within 0.05 % of a thousand up to an ampere-hour, within 0.5 % up to four.
 */
const STEPS = 4;

const power = ({ volts, current }: OperatingPoint): number => volts * current;

/** @param lasting how long a step of this size takes at a current, s */
function run(cell: WarmingCell, steps: number, lasting: (amps: number) => number): Ran {
  let [charge, time, rise] = [0, 0, 0];
  for (let n = 0; n < steps; n += 1) {
    const start = cell.pointAt(rise);
    const halfway = riseAfter(cell, rise, power(start), si<'time'>(lasting(start.current) / 2));
    const middle = cell.pointAt(halfway);
    const lasts = si<'time'>(lasting(middle.current));
    rise = riseAfter(cell, rise, power(middle), lasts);
    charge += middle.current * lasts;
    time += lasts;
  }
  return { charge: si<'charge'>(charge), time: si<'time'>(time), rise };
}

/** Runs until a charge has passed. */
export const runToCharge = (cell: WarmingCell, charge: Charge, steps = STEPS): Ran =>
  run(cell, steps, (amps) => charge / steps / amps);

/** Runs for a time. */
export const runForTime = (cell: WarmingCell, time: Duration, steps = STEPS): Ran =>
  run(cell, steps, () => time / steps);

/**
 * Time until the bath is this much warmer.
 * @param rise K above the start
 * @returns s; 0 when it is already reached, infinite when it never is
 */
export function timeToWarm(cell: WarmingCell, rise: number, steps = STEPS): Duration {
  if (rise <= 0) return si<'time'>(0);
  let time = 0;
  for (let n = 0; n < steps; n += 1) {
    const [from, to] = [(rise * n) / steps, (rise * (n + 1)) / steps];
    time += timeToRise(cell, from, to, power(cell.pointAt((from + to) / 2)));
  }
  return si<'time'>(time);
}
