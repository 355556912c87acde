import type { Kinetics } from './problem.ts';

/** A surface law as a straight line near one current density: η = offset + resistance·j. */
export interface Straight {
  /** ohm·m² */
  readonly resistance: number;
  /** V */
  readonly offset: number;
}

/**
 * The voltage over a surface near a current density, as a straight line.
 * @param j A/m², leaving the metal or entering it
 */
export function straightened(kinetics: Kinetics, j: number): Straight {
  if (kinetics.kind === 'none') return { resistance: 0, offset: 0 };
  if (kinetics.kind === 'linear') return { resistance: kinetics.resistance, offset: 0 };
  const { slope, exchange } = kinetics;
  const resistance = slope / Math.hypot(j, 2 * exchange);
  return { resistance, offset: slope * Math.asinh(j / (2 * exchange)) - resistance * j };
}

export const isStraight = ({ kind }: Kinetics): boolean => kind !== 'butlerVolmer';
