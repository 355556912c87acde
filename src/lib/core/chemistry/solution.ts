import type { BoughtSalt } from '../facts/salts.ts';
import { celsiusOf, si } from '../units/quantity.ts';
import type { Conductivity, Mass, MassConcentration, Temperature, Volume } from '../units/quantity.ts';
import { ends, OutsideTable, readTable } from './curve.ts';
import { densityAt } from './density.ts';
import { anhydrousShare, fractionAt, strengthAt } from './strength.ts';
import { waterDensity } from './water-density.laliberte2009.ts';

/** A mixed bath at its temperature. */
export interface Solution {
  /** anhydrous solute, % of the solution's mass */
  readonly massPercent: number;
  /** mol/L */
  readonly molarity: number;
  /** kg/m³ */
  readonly density: number;
  readonly conductivity: Conductivity;
}

/**
 * How much of the solid as bought dissolves in a litre of water.
 * @returns kg/m³ of water
 * @throws OutsideTable outside the table's temperatures
 */
export function solubility(salt: BoughtSalt, temperature: Temperature): MassConcentration {
  const celsius = celsiusOf(temperature);
  const anhydrous = readTable(salt.facts.solubility, celsius);
  const share = anhydrousShare(salt);
  const bought = anhydrous / (share - (anhydrous * (1 - share)) / 100);
  return si<'massConcentration'>((bought / 100) * waterDensity(celsius));
}

/** Conductivity at temperature: the handbook's 20 °C curve with its linear slope. */
function conductivity(salt: BoughtSalt, fraction: number, celsius: number): Conductivity {
  const { conductivity: table, conductivitySlope } = salt.facts;
  const [low, high] = conductivitySlope.validFor.temperature ?? [20, 20];
  if (celsius < low || celsius > high)
    throw new OutsideTable(celsius, low, high, 'degC', conductivitySlope.locator);
  const at20 = readTable(table, 100 * fraction, 'log');
  return si<'conductivity'>(0.1 * at20 * (1 + (conductivitySlope.value / 100) * (celsius - 20)));
}

/**
 * How much better a bath conducts after warming up. Beyond the temperatures of the table no further gain is
 * counted, since it is not known.
 * @param from temperature at which its conductivity is known
 * @param rise K over that
 * @returns conductivity over the one it started with
 */
export function warmGain({ facts }: BoughtSalt, from: Temperature, rise: number): number {
  const { value, validFor } = facts.conductivitySlope;
  const [, high] = validFor.temperature ?? [20, 20];
  const start = celsiusOf(from);
  const over20 = (celsius: number): number => 1 + (value / 100) * (celsius - 20);
  return over20(Math.max(start, Math.min(start + rise, high))) / over20(start);
}

/**
 * All properties of a bath that follow from its recipe.
 * @param strength g of the solid as bought per litre of water
 * @throws OutsideTable when strength or temperature leaves the tables
 */
export function dissolve(salt: BoughtSalt, strength: MassConcentration, temperature: Temperature): Solution {
  const celsius = celsiusOf(temperature);
  const fraction = fractionAt(salt, strength, celsius);
  const rho = densityAt(salt.facts, 100 * fraction, celsius);
  return {
    massPercent: 100 * fraction,
    molarity: (fraction * rho) / salt.facts.molarMass.value,
    density: rho,
    conductivity: conductivity(salt, fraction, celsius),
  };
}

/**
 * The strengths that the conductivity and density tables cover at this temperature.
 * @returns g of the bought solid per litre of water: lowest and highest
 */
export function coveredStrengths(
  salt: BoughtSalt,
  temperature: Temperature,
): [MassConcentration, MassConcentration] {
  const celsius = celsiusOf(temperature);
  const at = (percent: number) => si<'massConcentration'>(strengthAt(salt, percent / 100, celsius));
  const { conductivity: kappa, density: rho } = salt.facts;
  const [[weakest, strongest], [, densest]] = [ends(kappa), ends(rho)];
  return [at(weakest), at(Math.min(strongest, densest))];
}

/**
 * Water needed for a volume of mixed bath.
 * @returns m³ of water at bath temperature
 */
export function waterFor(
  bath: Volume,
  solution: Solution,
  strength: MassConcentration,
  temperature: Temperature,
): Volume {
  return si<'volume'>((bath * solution.density) / (waterDensity(celsiusOf(temperature)) + strength));
}

/** Volume of bath that a mass of water and its salt make; the inverse of `waterFor`. */
export function bathFrom(
  water: Volume,
  solution: Solution,
  strength: MassConcentration,
  temperature: Temperature,
): Volume {
  return si<'volume'>((water * (waterDensity(celsiusOf(temperature)) + strength)) / solution.density);
}

/** Solid to weigh for a volume of water. */
export const saltFor = (water: Volume, strength: MassConcentration): Mass => si<'mass'>(water * strength);

/** Temperatures, °C, that both the solubility table and the conductivity slope cover. */
export function coveredTemperatures({ facts }: BoughtSalt): [number, number] {
  const slope = facts.conductivitySlope.validFor.temperature ?? [20, 20];
  const [low, high] = ends(facts.solubility);
  return [Math.max(slope[0], low), Math.min(slope[1], high)];
}

/** Whether the solubility table reaches this temperature. */
export function coversSolubility({ facts }: BoughtSalt, temperature: Temperature): boolean {
  const celsius = celsiusOf(temperature);
  const [low, high] = ends(facts.solubility);
  return celsius >= low && celsius <= high;
}
