import type { Kinetics } from './problem.ts';

/** A surface law made straight about a current: η = offset + resistance·j. */
export interface Straight {
  /** ohm·m² */
  readonly resistance: number;
  /** V */
  readonly offset: number;
}

/**
 * What a surface costs near a current density, as a straight line.
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
