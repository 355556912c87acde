import { AMPERE_HOUR, ATMOSPHERE, FARADAY, GAS_CONSTANT } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Charge, Current, Duration, Volume } from '../units/quantity.ts';

/*
 * Almost no chlorine forms while metal dissolves. We take 1 % of the charge as the highest likely share: it
 * is our own estimate and marked as such. If something goes wrong, all of the charge may make chlorine.
 */

/** Temperature and pressure at which gas volumes are given, unless stated otherwise. */
export const gasState = { kelvin: 298.15, pascal: ATMOSPHERE } as const;

/** Volume of one mole of ideal gas, m³. */
export const molarVolume = (kelvin: number = gasState.kelvin, pascal: number = gasState.pascal): number =>
  (GAS_CONSTANT * kelvin) / pascal;

/**
 * Dry gas made by a charge. The default of two electrons a molecule holds for hydrogen and chlorine.
 * @returns m³ at 25 °C and 1 atm
 */
export const gasVolume = (charge: Charge, electrons = 2): Volume =>
  si<'volume'>((charge / (electrons * FARADAY)) * molarVolume());

/**
 * Time until a gas reaches a share of a closed space, t = share·V/G: hydrogen under a lid, chlorine in a
 * room. Assumes that all the current makes gas, two electrons a molecule, well mixed, and that none escapes.
 * @param space m³
 * @param share volume share
 * @returns s
 */
export const timeToReach = (current: Current, space: Volume, share: number): Duration =>
  si<'time'>((share * space) / gasVolume(si<'charge'>(current)));

/**
 * Volume share of a gas in a closed room, in parts per million.
 * @param room m³
 */
export const partsPerMillion = (gas: Volume, room: Volume): number => (1e6 * gas) / room;

/**
 * Fresh air that keeps a gas below a share, Q = K·G/C (the form of NIOSH and ACGIH).
 * @param perSecond gas given off, m³/s
 * @param share highest volume share allowed
 * @param mixing 1 where the air mixes at once, up to 10 where it hardly does
 * @returns m³/s
 */
export const freshAir = (perSecond: number, share: number, mixing: number): number =>
  (mixing * perSecond) / share;

/**
 * Fresh air for a cell that gives off hydrogen, as EN 62485 sets it for battery rooms: 0.05 m³/h for each
 * ampere, five times what keeps hydrogen below 4 %.
 * @returns m³/s
 */
export const hydrogenAir = (amps: Current): number => (0.05 * amps) / 3600;

/**
 * Area of each of two openings, one in and one out, that let this much air through a room without a fan, as
 * EN 62485 sets it: 28 cm² for each m³/h.
 * @returns m²
 */
export const airOpening = (perSecond: number): number => 28e-4 * 3600 * perSecond;

/** Charge in ampere-hours. */
export const ampereHours = (charge: Charge): number => charge / AMPERE_HOUR;
