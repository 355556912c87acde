import { limits } from '../facts/limits.ts';
import type { Plan } from './plan.ts';

/*
 * Depth goes with charge at one current efficiency, so minutes or amps are scaled by wanted over got; amps
 * only where supply and film allow.
 */

/** The depth that a bite reached, and the minutes and amps that it took. */
export interface Bite {
  /** mean depth measured, μm */
  readonly gotUm: number;
  /** mean depth wanted, μm */
  readonly wantedUm: number;
  /** with current on */
  readonly minutes: number;
  /** mean over those minutes */
  readonly amps: number;
}

/** Two ways to reach the wanted depth; the maker changes one and leaves the other. */
export interface Adjustment {
  /** at the same amps */
  readonly minutes: number;
  /** for the same minutes; null where the supply or the liquid at the metal cannot carry them */
  readonly amps: number | null;
}

/**
 * What would have reached the wanted depth: minutes or amps grow by wanted over got (Faraday's law).
 * @returns null when no depth was measured, or none was wanted
 */
export function adjusted({ gotUm, wantedUm, minutes, amps }: Bite, plan: Plan): Adjustment | null {
  if (!(gotUm > 0) || !(wantedUm > 0) || !(minutes > 0)) return null;
  const more = wantedUm / gotUm;
  const { current, current_density: density, limiting_current_density: limit } = plan.figures;
  const { supply } = plan.job;
  const mostBySupply = supply.control === 'volts' && supply.maxAmps !== null ? supply.maxAmps : Infinity;
  const mostByFilm =
    current && density && limit
      ? (current.value * limits.filmWarning.value * limit.value) / density.value
      : Infinity;
  const raised = amps * more;
  return {
    minutes: minutes * more,
    amps: amps > 0 && raised <= Math.min(mostBySupply, mostByFilm) ? raised : null,
  };
}
