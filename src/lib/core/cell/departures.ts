import { changes } from './change-of-level.ts';
import type { Shape } from './change-of-level.ts';

/** What the meters showed at a moment of a run; null where nobody looked. */
export interface Seen {
  /** with current on */
  readonly minutes: number;
  readonly amps: number | null;
  readonly volts: number | null;
  readonly celsius: number | null;
}

/** What the run was planned with. */
export interface Expected {
  /** V that drive no current */
  readonly offset: number;
  /** what the knob holds: with the amps held it is the volts that tell */
  readonly holds: 'amps' | 'volts';
  readonly celsius: number;
  /** of the conductivity, per kelvin */
  readonly slope: number;
  /** °C from which resist lifts */
  readonly warm: number;
  /** silver grows trees towards the plate */
  readonly isSilver: boolean;
}

/** What makes a run leave its plan. */
export type Cause = 'resist-lifts' | 'film' | 'clip-wet' | 'contact' | 'warm' | 'bridged';

/** A run that has left its plan. */
export interface Departure {
  /** likeliest first */
  readonly causes: readonly Cause[];
  /** what passes now for each volt that drives, over what passed at first */
  readonly ratio: number;
}

/** How far a bench with its meters wavers, one standard deviation: as a share, and in amps and volts. */
const WAVER = 0.05;
const AMPS_OFF = 0.005;
const VOLTS_OFF = 0.04;
/** A dead meter has no logarithm: this stands for none, A; and as little as may drive, V. */
const LEAST_AMPS = 0.01;
const LEAST_DRIVING = 0.2;
/** Change from which anything is said. */
const LEAST = 0.16;
/** Kelvin by which a bath may be warmer than planned before the amps are laid to it. */
const WARMER = 6;

interface Point {
  readonly minutes: number;
  /** ln of what passes for each volt that drives, at the planned temperature */
  readonly level: number;
  readonly deviation: number;
}

/** What passes for each volt, as far as meters tell; the temperature taken out where it was read. */
function levelsOf(seen: readonly Seen[], { offset, holds, celsius, slope }: Expected): readonly Point[] {
  let degrees = celsius;
  const read = seen.flatMap((one) => {
    degrees = one.celsius ?? degrees;
    return one.amps === null ? [] : [{ ...one, amps: one.amps, degrees }];
  });
  const both = read.filter(({ volts }) => volts !== null && volts - offset > LEAST_DRIVING);
  // one way for all of a run: readings with and without volts are not held against each other
  const byVolts = holds === 'amps' ? both.length >= 2 : both.length === read.length;
  return (byVolts ? both : read).map(({ minutes, amps, volts, degrees: warmth }) => {
    const driving = byVolts ? (volts as number) - offset : 1;
    const passes = Math.max(amps, LEAST_AMPS);
    return {
      minutes,
      level: Math.log(passes / driving / (1 + slope * (warmth - celsius))),
      deviation: Math.hypot(WAVER, AMPS_OFF / passes, byVolts ? VOLTS_OFF / driving : 0),
    };
  });
}

const rising: Readonly<Record<Shape, readonly Cause[]>> = {
  step: ['clip-wet', 'resist-lifts'],
  ramp: ['resist-lifts', 'clip-wet'],
  runaway: ['bridged', 'resist-lifts'],
  decay: ['resist-lifts', 'clip-wet'],
  wander: ['contact', 'clip-wet'],
};
const falling: Readonly<Record<Shape, readonly Cause[]>> = {
  step: ['contact', 'film'],
  ramp: ['film', 'contact'],
  runaway: ['film', 'contact'],
  decay: ['film', 'contact'],
  wander: ['contact', 'film'],
};

/**
 * Whether a run leaves its plan, and what most likely makes it: measured against its own first readings, so
 * that a bench slower than planned is not held against it.
 * @param seen of one run, oldest first
 * @returns null while all is well, or too little has been read to tell
 */
export function departureOf(seen: readonly Seen[], expected: Expected): Departure | null {
  const points = levelsOf(seen, expected);
  const latest = seen.findLast(({ celsius }) => celsius !== null)?.celsius ?? null;
  const isWarm = latest !== null && latest >= expected.warm;
  const found = changes(points);
  const ratio = found ? Math.exp(found.change) : 1;
  if (found && (found.shape === 'wander' || Math.abs(found.change) >= LEAST)) {
    const table = found.change > 0 && found.shape !== 'wander' ? rising : falling;
    const causes = table[found.shape].filter((cause) => cause !== 'bridged' || expected.isSilver);
    return { causes: isWarm ? [...causes, 'warm'] : causes, ratio };
  }
  const isWarmer = latest !== null && latest - expected.celsius >= WARMER;
  return isWarm || (isWarmer && latest >= expected.warm - 2) ? { causes: ['warm'], ratio } : null;
}
