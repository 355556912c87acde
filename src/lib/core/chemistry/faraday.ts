import { FARADAY } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Area, Charge, Length, Mass } from '../units/quantity.ts';

/**
 * Faraday's law: mass dissolved by a charge.
 * @param charge C
 * @param equivalentWeight g/mol of electrons
 * @param currentYield share of the charge that dissolves metal, 1
 * @returns kg
 */
export const dissolvedMass = (charge: Charge, equivalentWeight: number, currentYield = 1): Mass =>
  si<'mass'>((1e-3 * currentYield * charge * equivalentWeight) / FARADAY);

/**
 * Charge that dissolves a mass; the inverse of `dissolvedMass`.
 * @returns C
 */
export const chargeToDissolve = (mass: Mass, equivalentWeight: number, currentYield = 1): Charge =>
  si<'charge'>((1e3 * mass * FARADAY) / (equivalentWeight * currentYield));

/**
 * Depth when a mass is removed evenly from an area.
 * @param density kg/m³
 * @returns m
 */
export const meanDepth = (mass: Mass, density: number, area: Area): Length =>
  si<'length'>(mass / (density * area));

/**
 * Mass of a layer.
 * @param density kg/m³
 * @returns kg
 */
export const layerMass = (depth: Length, density: number, area: Area): Mass =>
  si<'mass'>(depth * density * area);
