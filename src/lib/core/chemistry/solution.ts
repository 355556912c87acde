import type { BoughtSalt, ShelfSalt } from '../facts/salts.ts';
import { CELSIUS_ZERO } from '../units/constants.ts';
import { si } from '../units/quantity.ts';
import type { Conductivity, Mass, MassConcentration, Temperature, Volume } from '../units/quantity.ts';
import { OutsideTable, readTable } from './curve.ts';
import { solutionDensity, waterDensity } from './water-density.laliberte2009.ts';

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

const toCelsius = (temperature: Temperature): number => temperature - CELSIUS_ZERO;

/** Share of the bought solid that is the anhydrous salt. */
export const anhydrousShare = ({ facts, hydrate }: ShelfSalt): number =>
  hydrate ? facts.molarMass.value / hydrate.molarMass.value : 1;

/**
 * Anhydrous mass fraction of what one gets by adding the bought solid to water. Water of
 * crystallisation counts as water.
 * @param strength g of the solid as bought per litre of water
 */
export function massFraction(
  salt: BoughtSalt,
  strength: MassConcentration,
  temperature: Temperature,
): number {
  const water = waterDensity(toCelsius(temperature));
  return (anhydrousShare(salt) * strength) / (water + strength);
}

/**
 * How much of the bought solid a litre of water takes up.
 * @returns kg/m³ of water
 * @throws OutsideTable outside the table's temperatures
 */
export function solubility(salt: BoughtSalt, temperature: Temperature): MassConcentration {
  const celsius = toCelsius(temperature);
  const anhydrous = readTable(salt.facts.solubility, celsius);
  const share = anhydrousShare(salt);
  const bought = anhydrous / (share - (anhydrous * (1 - share)) / 100);
  return si<'massConcentration'>((bought / 100) * waterDensity(celsius));
}

/**
 * Density at temperature: the handbook's 20 °C curve, moved by the ratio that Laliberté's model gives.
 * @returns kg/m³
 */
function density(salt: BoughtSalt, fraction: number, celsius: number): number {
  const { density: table, apparentDensity } = salt.facts;
  const at20 = 1000 * readTable(table, 100 * fraction);
  const { c } = apparentDensity;
  return (at20 * solutionDensity(c, fraction, celsius)) / solutionDensity(c, fraction, 20);
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
 * How much better a bath conducts that has warmed up. Beyond what the slope covers no more gain is counted.
 * @param from temperature at which its conductivity is known
 * @param rise K over that
 * @returns conductivity over the one it started with
 */
export function warmGain({ facts }: BoughtSalt, from: Temperature, rise: number): number {
  const { value, validFor } = facts.conductivitySlope;
  const [, high] = validFor.temperature ?? [20, 20];
  const start = toCelsius(from);
  const over20 = (celsius: number): number => 1 + (value / 100) * (celsius - 20);
  return over20(Math.max(start, Math.min(start + rise, high))) / over20(start);
}

/**
 * Everything that follows from the recipe.
 * @param strength g of the solid as bought per litre of water
 * @throws OutsideTable when strength or temperature leaves the tables
 */
export function dissolve(salt: BoughtSalt, strength: MassConcentration, temperature: Temperature): Solution {
  const celsius = toCelsius(temperature);
  const fraction = massFraction(salt, strength, temperature);
  const rho = density(salt, fraction, celsius);
  return {
    massPercent: 100 * fraction,
    molarity: (fraction * rho) / salt.facts.molarMass.value,
    density: rho,
    conductivity: conductivity(salt, fraction, celsius),
  };
}

/**
 * Strongest recipe that the conductivity and density tables cover at this temperature.
 * @returns g of the bought solid per litre of water: lowest and highest
 */
export function coveredStrengths(
  salt: BoughtSalt,
  temperature: Temperature,
): [MassConcentration, MassConcentration] {
  const water = waterDensity(toCelsius(temperature));
  const share = anhydrousShare(salt);
  const strengthAt = (fraction: number) => si<'massConcentration'>((fraction * water) / (share - fraction));
  const { conductivity: kappa, density: rho } = salt.facts;
  const top = Math.min(kappa.x.at(-1) as number, rho.x.at(-1) as number) / 100;
  return [strengthAt((kappa.x[0] as number) / 100), strengthAt(top)];
}

/**
 * Water to pour so that the mixed bath has a volume.
 * @returns m³ of water at bath temperature
 */
export function waterFor(
  bath: Volume,
  solution: Solution,
  strength: MassConcentration,
  temperature: Temperature,
): Volume {
  return si<'volume'>((bath * solution.density) / (waterDensity(toCelsius(temperature)) + strength));
}

/** Volume that a mass of water and its salt make; the inverse of `waterFor`. */
export function bathFrom(
  water: Volume,
  solution: Solution,
  strength: MassConcentration,
  temperature: Temperature,
): Volume {
  return si<'volume'>((water * (waterDensity(toCelsius(temperature)) + strength)) / solution.density);
}

/** Solid to weigh for a volume of water. */
export const saltFor = (water: Volume, strength: MassConcentration): Mass => si<'mass'>(water * strength);

/** Temperatures, °C, that both the solubility table and the conductivity slope cover. */
export function coveredTemperatures({ facts }: BoughtSalt): [number, number] {
  const slope = facts.conductivitySlope.validFor.temperature ?? [20, 20];
  const { x } = facts.solubility;
  return [Math.max(slope[0], x[0] as number), Math.min(slope[1], x.at(-1) as number)];
}

/** Whether the solubility table reaches this temperature. */
export function coversSolubility({ facts }: BoughtSalt, temperature: Temperature): boolean {
  const celsius = toCelsius(temperature);
  return celsius >= (facts.solubility.x[0] as number) && celsius <= (facts.solubility.x.at(-1) as number);
}
