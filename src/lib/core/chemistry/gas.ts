import { AMPERE_HOUR, ATMOSPHERE, FARADAY, GAS_CONSTANT } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Charge, Current, Duration, Volume } from '../units/quantity.ts';

/** Volume of one mole of ideal gas, m³; 25 °C and 1 atm unless said. */
export const molarVolume = (kelvin = 298.15, pascal = ATMOSPHERE): number => (GAS_CONSTANT * kelvin) / pascal;

/**
 * Dry gas made by a charge, two electrons a molecule as for hydrogen and chlorine.
 * @returns m³ at 25 °C and 1 atm
 */
export const gasVolume = (charge: Charge, electrons = 2): Volume =>
  si<'volume'>((charge / (electrons * FARADAY)) * molarVolume());

/**
 * Time until hydrogen reaches its flammable limit under an airtight lid, t = limit·V/G: all the
 * current makes hydrogen, well mixed, none escapes.
 * @param headspace m³
 * @param limit volume share, 0.04
 * @returns s
 */
export const timeToFlammable = (current: Current, headspace: Volume, limit: number): Duration =>
  si<'time'>((limit * headspace) / gasVolume(si<'charge'>(current)));

/**
 * Volume share of a gas in a closed room, in parts per million.
 * @param room m³
 */
export const partsPerMillion = (gas: Volume, room: Volume): number => (1e6 * gas) / room;

/** Charge in ampere-hours. */
export const ampereHours = (charge: Charge): number => charge / AMPERE_HOUR;
