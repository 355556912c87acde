import { toMinutes } from '../units/time.ts';
import type { Reading } from './run.ts';

/** What a run was planned with. */
export interface Expected {
  /** A */
  readonly amps: number;
  /** V that drive no current */
  readonly offset: number;
  /** what the knob holds: with the amps held it is the volts that tell */
  readonly holds: 'amps' | 'volts';
  readonly celsius: number;
  /** of the conductivity, per kelvin */
  readonly slope: number;
  /** silver grows trees towards the plate */
  readonly isSilver: boolean;
  readonly limits: {
    /** °C from which resist lifts */
    readonly warn: number;
    /** °C from which nothing is run */
    readonly stop: number;
    /** V from which nothing is run */
    readonly volts: number;
  };
}

/** How well the cell passes current at one reading. */
export interface Level {
  readonly minutes: number;
  /** ln of what passes for each volt that drives, at the planned temperature */
  readonly level: number;
  /** of the level, one standard deviation */
  readonly deviation: number;
  /** whether its volts were read too: else each volt is taken to drive the same */
  readonly hasVolts: boolean;
}

/** How far a bench with its meters wavers, one standard deviation: as a share, and in amps and volts. */
const WAVER = 0.05;
const AMPS_OFF = 0.005;
const VOLTS_OFF = 0.04;
/** A dead meter has no logarithm: this stands for none, A; and as little as may drive, V. */
const LEAST_AMPS = 0.01;
const LEAST_DRIVING = 0.2;

/**
 * What passes for each volt, as far as meters tell; the temperature taken out where it was read.
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
  // one way for all of a run: readings with and without volts are not held against each other
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
