import { toMinutes } from '../units/time.ts';
import type { Reading } from './run.ts';

/** What the plan of a run expects. */
export interface Expected {
  /** A */
  readonly amps: number;
  /** V needed before current flows */
  readonly offset: number;
  /** what the supply keeps constant; with amps, a change shows in the volts */
  readonly holds: 'amps' | 'volts';
  readonly celsius: number;
  /** change of the conductivity, per kelvin */
  readonly slope: number;
  /** silver can grow branches towards the plate */
  readonly isSilver: boolean;
  readonly limits: {
    /** °C from which resist lifts */
    readonly warn: number;
    /** °C from which a run is stopped */
    readonly stop: number;
    /** V from which a run is stopped */
    readonly volts: number;
  };
}

/** How well the cell conducts at one reading. */
export interface Level {
  readonly minutes: number;
  /** ln of the current per driving volt, at the planned temperature */
  readonly level: number;
  /** one standard deviation of the level */
  readonly deviation: number;
  /** whether volts were read too; otherwise the driving voltage counts as constant */
  readonly hasVolts: boolean;
}

/** How much current and meters vary, one standard deviation: as a share, in amps and in volts. */
const WAVER = 0.05;
const AMPS_OFF = 0.005;
const VOLTS_OFF = 0.04;
/** Smallest current, A, so that a meter at 0 still has a logarithm; and smallest driving voltage, V. */
const LEAST_AMPS = 0.01;
const LEAST_DRIVING = 0.2;

/**
 * The current per driving volt at each reading, with the effect of the temperature removed where it was read.
 * @param readings of one run, oldest first
 */
export function levelsOf(
  readings: readonly Reading[],
  { offset, holds, celsius, slope }: Expected,
): readonly Level[] {
  let degrees = celsius;
  const read = readings.flatMap((one) => {
    degrees = one.celsius ?? degrees;
    return one.amps === null ? [] : [{ ...one, amps: one.amps, degrees }];
  });
  const both = read.filter(({ volts }) => volts !== null && volts - offset > LEAST_DRIVING);
  // levels with and without volts cannot be compared, so all readings of a run use the same way
  const byVolts = holds === 'amps' ? both.length >= 2 : both.length === read.length;
  return (byVolts ? both : read).map(({ at, amps, volts, degrees: warmth }) => {
    const driving = byVolts ? (volts as number) - offset : 1;
    const passes = Math.max(amps, LEAST_AMPS);
    return {
      minutes: toMinutes(at),
      level: Math.log(passes / driving / (1 + slope * (warmth - celsius))),
      deviation: Math.hypot(WAVER, AMPS_OFF / passes, byVolts ? VOLTS_OFF / driving : 0),
      hasVolts: byVolts,
    };
  });
}
