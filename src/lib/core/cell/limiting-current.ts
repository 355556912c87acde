import { FARADAY } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { CurrentDensity, Length } from '../units/quantity.ts';

const GRAVITY = 9.80665;
/** Free, laminar convection at a vertical plate: Sh = 0.66·(Sc·Gr)^¼ (Wagner 1949; Wilke et al. 1953). */
const SHERWOOD = 0.66;

/** The range of Sc·Gr in which the law was confirmed. */
export const laminarRange = [1e4, 4e13] as const;

export interface Film {
  /** m²/s */
  readonly diffusivity: number;
  /** m²/s */
  readonly viscosity: number;
  /** relative density change per concentration, m³/mol */
  readonly expansion: number;
  /** concentration at the metal over that of the bath, mol/m³ */
  readonly excess: number;
  readonly electrons: number;
}

/** Sc·Gr of a vertical plate. */
export const rayleigh = (film: Film, height: Length): number =>
  (GRAVITY * film.expansion * film.excess * height ** 3) / (film.viscosity * film.diffusivity);

/**
 * Largest current density whose dissolved metal free convection can carry away from a vertical plate.
 * @returns A/m²
 */
export function convectionLimit(film: Film, height: Length): CurrentDensity {
  const sherwood = SHERWOOD * rayleigh(film, height) ** 0.25;
  return si<'currentDensity'>(
    (film.electrons * FARADAY * film.diffusivity * film.excess * sherwood) / height,
  );
}

/**
 * The same at the bottom of a groove: diffusion through the recess in series with convection.
 * @param recess depth plus thickness of the resist
 */
export function recessedLimit(film: Film, height: Length, recess: Length): CurrentDensity {
  const through = recess / (film.electrons * FARADAY * film.diffusivity * film.excess);
  return si<'currentDensity'>(1 / (1 / convectionLimit(film, height) + through));
}
