import { si } from '../units/quantity.ts';
import type { Current, Duration, Length, Mass, Voltage } from '../units/quantity.ts';

/**
 * Warming rate of a bath that loses nothing: all of V·I stays in it.
 * @param heatCapacity J/(kg·K)
 * @returns K/s
 */
export const heatingRate = (volts: Voltage, amps: Current, bath: Mass, heatCapacity: number): number =>
  (volts * amps) / (bath * heatCapacity);

/**
 * Heat lost per kelvin by an open tub on a table.
 * @param side W/(m²·K), walls and open top
 * @param bottom W/(m²·K)
 * @param footprint m², open top and floor alike
 * @param perimeter m
 * @returns W/K
 */
export const coolingOf = (
  side: number,
  bottom: number,
  footprint: number,
  perimeter: Length,
  fill: Length,
): number => side * (perimeter * fill + footprint) + bottom * footprint;

/**
 * Rise over the room after a time, T(t) − T₀ = (P/hA)(1 − exp(−t·hA/(m·c))).
 * @param cooling W/K; 0 for a bath that loses nothing
 * @returns K
 */
export function temperatureRise(
  volts: Voltage,
  amps: Current,
  bath: Mass,
  heatCapacity: number,
  cooling: number,
  time: Duration,
): number {
  const power = volts * amps;
  const stored = bath * heatCapacity;
  if (cooling === 0) return (power * time) / stored;
  return (power / cooling) * (1 - Math.exp((-1 * time * cooling) / stored));
}

/** Volume of water at a density, as mass. */
export const massOf = (volume: number, density: number): Mass => si<'mass'>(volume * density);
