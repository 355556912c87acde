import { si } from '../units/quantity.ts';
import type { Current, Duration, Length, Mass, Voltage } from '../units/quantity.ts';

/**
 * Warming rate of a bath that loses no heat: all of V·I stays in it.
 * @param heatCapacity J/(kg·K)
 * @returns K/s
 */
export const heatingRate = (volts: Voltage, amps: Current, bath: Mass, heatCapacity: number): number =>
  (volts * amps) / (bath * heatCapacity);

/**
 * Heat lost by an open tub on a table, per kelvin above the room.
 * @param side W/(m²·K), walls and open top
 * @param bottom W/(m²·K)
 * @param footprint m², of the open top and of the floor
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

/** A bath that stores heat and loses it to the room. */
export interface Thermal {
  /** heat capacity m·c, J/K */
  readonly stored: number;
  /** heat loss hA, W/K; 0 for a bath that loses none */
  readonly cooling: number;
}

/** (1 − exp(−x))/x, with its limit at 0. */
const fading = (x: number): number => (x === 0 ? 1 : -Math.expm1(-x) / x);
/** ln(1 + x)/x, with its limit at 0. */
const nearing = (x: number): number => (x === 0 ? 1 : Math.log1p(x) / x);

/**
 * Temperature above the room after some time at constant power, m·c·dT/dt = P − hA·(T − T₀).
 * @param from K above the room
 * @param power W
 * @returns K above the room
 */
export const riseAfter = (
  { stored, cooling }: Thermal,
  from: number,
  power: number,
  time: Duration,
): number => from + ((power - cooling * from) * time * fading((cooling * time) / stored)) / stored;

/**
 * Time from one temperature above the room to a higher one at constant power.
 * @returns s; infinite when cooling keeps the bath below it
 */
export function timeToRise({ stored, cooling }: Thermal, from: number, to: number, power: number): Duration {
  const left = power - cooling * to;
  if (left <= 0) return si<'time'>(Infinity);
  return si<'time'>(((stored * (to - from)) / left) * nearing((cooling * (to - from)) / left));
}

/** Volume of water at a density, as mass. */
export const massOf = (volume: number, density: number): Mass => si<'mass'>(volume * density);
