import type { UnitId } from '../units/convert.ts';
import type { ShelfSalt } from '../facts/salts.ts';
import { celsiusOf, si } from '../units/quantity.ts';
import type { Mass, MassConcentration, Temperature, Volume } from '../units/quantity.ts';
import { ends, readTable } from './curve.ts';
import { densityAt } from './density.ts';
import { anhydrousShare, fractionAt, strengthAt } from './strength.ts';
import { waterDensity } from './water-density.laliberte2009.ts';

/**
 * Solutions of one salt in water. From any two of salt, water and strength it works out the rest. Outside a
 * table it refuses and names the range: nothing is extrapolated.
 */

/** Why there is no answer. `nearest` is the closest value that has one. */
export type SolutionRefusal =
  | {
      readonly refused: 'outside';
      readonly quantity: 'massPercent' | 'temperature' | 'density' | 'strength';
      readonly unit: UnitId;
      readonly found: number;
      readonly low: number;
      readonly high: number;
      readonly nearest: number;
    }
  | { readonly refused: 'noTable'; readonly table: 'solubility' | 'conductivity' }
  | { readonly refused: 'needsAmount' }
  | { readonly refused: 'alreadyThere' };

/** A mixed solution. */
export interface Mixed {
  /** the solid as bought, kg */
  readonly salt: Mass;
  /** water poured, m³ at the temperature, without the water of crystallisation */
  readonly water: Volume;
  /** solid as bought per volume of water, kg/m³ = g/L */
  readonly strength: MassConcentration;
  /** anhydrous salt, % of the solution's mass */
  readonly massPercent: number;
  /** mol of anhydrous salt per litre of solution */
  readonly molarity: number;
  /** kg/m³ */
  readonly density: number;
  /** m³ of solution */
  readonly volume: Volume;
}

/** What is known of a solution: two of these, but not two strengths. */
export interface Known {
  readonly salt?: Mass;
  readonly water?: Volume;
  readonly strength?: MassConcentration;
  readonly massPercent?: number;
  readonly molarity?: number;
}

/** A density in kg/m³ as a hydrometer shows it, in g/cm³. */
export const hydrometer = (density: number): number => density / 1000;

export const isRefused = (answer: object): answer is SolutionRefusal => 'refused' in answer;

const outside = (
  quantity: 'massPercent' | 'temperature' | 'density' | 'strength',
  unit: UnitId,
  found: number,
  [low, high]: readonly [number, number],
): SolutionRefusal => ({
  refused: 'outside',
  quantity,
  unit,
  found,
  low,
  high,
  nearest: Math.min(high, Math.max(low, found)),
});

/** Temperatures, °C, at which the density is known; only 20 °C for a salt without a model. */
export function densityTemperatures({ facts }: ShelfSalt): readonly [number, number] {
  const [low, high] = facts.apparentDensity?.validFor['temperature'] ?? [20, 20];
  return [Math.min(low, 20), Math.max(high, 20)];
}

/**
 * Density of a solution.
 * @param massPercent anhydrous salt, %
 * @returns kg/m³, or a refusal
 */
export function densityOf(
  salt: ShelfSalt,
  massPercent: number,
  temperature: Temperature,
): { readonly density: number } | SolutionRefusal {
  const celsius = celsiusOf(temperature);
  const temperatures = densityTemperatures(salt);
  if (celsius < temperatures[0] - 1e-9 || celsius > temperatures[1] + 1e-9)
    return outside('temperature', 'degC', celsius, temperatures);
  const range = ends(salt.facts.density);
  // a strength computed from the table's end and converted back may be off in its last digit
  if (!(massPercent >= range[0] - 1e-9 && massPercent <= range[1] + 1e-9))
    return outside('massPercent', '%', massPercent, range);
  const inside = Math.min(range[1], Math.max(range[0], massPercent));
  return { density: densityAt(salt.facts, inside, celsius) };
}

/**
 * How much salt dissolves in a litre of water.
 * @returns kg of the bought solid per m³ of water, or a refusal; infinite when the crystals dissolve in their
 *   own water
 */
export function mostStrength(
  salt: ShelfSalt,
  temperature: Temperature,
): { readonly strength: MassConcentration } | SolutionRefusal {
  const { solubility } = salt.facts;
  if (solubility === null) return { refused: 'noTable', table: 'solubility' };
  const celsius = celsiusOf(temperature);
  const range = ends(solubility);
  if (!(celsius >= range[0] && celsius <= range[1])) return outside('temperature', 'degC', celsius, range);
  const share = anhydrousShare(salt);
  const anhydrous = readTable(solubility, celsius);
  // crystals bring water with them: above some solubility they dissolve in their own
  const left = share - (anhydrous * (1 - share)) / 100;
  if (left <= 0) return { strength: si<'massConcentration'>(Infinity) };
  return { strength: si<'massConcentration'>((anhydrous / left / 100) * waterDensity(celsius)) };
}

/** The x where a rising function reaches a value, between two ends known to enclose it. */
function bisect(low: number, high: number, wanted: number, f: (x: number) => number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) < wanted) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Mass % of the anhydrous salt at a number of mol/L. */
function percentForMolarity(
  salt: ShelfSalt,
  molarity: number,
  temperature: Temperature,
): { readonly massPercent: number } | SolutionRefusal {
  const [low, high] = ends(salt.facts.density);
  const molarAt = (percent: number): number => {
    const answer = densityOf(salt, percent, temperature);
    return isRefused(answer) ? NaN : (percent * answer.density) / 100 / salt.facts.molarMass.value;
  };
  const top = densityOf(salt, high, temperature);
  if (isRefused(top)) return top;
  const most = molarAt(high);
  if (!(molarity >= 0 && molarity <= most)) return outside('strength', 'mol/L', molarity, [0, most]);
  return { massPercent: bisect(low, high, molarity, molarAt) };
}

/** The strength of a solution, for one litre of water, however it was given. */
function ofStrength(
  salt: ShelfSalt,
  known: Known,
  temperature: Temperature,
): { readonly strength: number } | SolutionRefusal | null {
  const celsius = celsiusOf(temperature);
  if (known.strength !== undefined) return { strength: known.strength };
  if (known.massPercent !== undefined) {
    const range = ends(salt.facts.density);
    if (!(known.massPercent >= range[0] && known.massPercent <= range[1]))
      return outside('massPercent', '%', known.massPercent, range);
    return { strength: strengthAt(salt, known.massPercent / 100, celsius) };
  }
  if (known.molarity === undefined) return null;
  const found = percentForMolarity(salt, known.molarity, temperature);
  return isRefused(found) ? found : { strength: strengthAt(salt, found.massPercent / 100, celsius) };
}

/**
 * All amounts of a solution from two that are known: salt and water, or one of them and a strength (g per
 * litre of water, mass %, or mol/L).
 * @returns the solution; a refusal that names the range, or `needsAmount` when no mass or volume was given
 */
export function mix(salt: ShelfSalt, known: Known, temperature: Temperature): Mixed | SolutionRefusal {
  const celsius = celsiusOf(temperature);
  const given = ofStrength(salt, known, temperature);
  if (given !== null && isRefused(given)) return given;
  const both = known.salt !== undefined && known.water !== undefined;
  const strength = both ? (known.salt as number) / (known.water as number) : given?.strength;
  if (strength === undefined || (known.salt === undefined && known.water === undefined))
    return { refused: 'needsAmount' };
  const most = mostStrength(salt, temperature);
  if (isRefused(most) && most.refused === 'outside') return most;
  if (!isRefused(most) && strength > most.strength * (1 + 1e-9))
    return outside('strength', 'g/L', strength, [0, most.strength]);
  const massPercent = 100 * fractionAt(salt, strength, celsius);
  const answer = densityOf(salt, massPercent, temperature);
  if (isRefused(answer)) return answer;
  const water = known.water ?? (known.salt as number) / strength;
  const mass = known.salt ?? water * strength;
  return {
    salt: si<'mass'>(mass),
    water: si<'volume'>(water),
    strength: si<'massConcentration'>(strength),
    massPercent,
    molarity: (massPercent * answer.density) / 100 / salt.facts.molarMass.value,
    density: answer.density,
    volume: si<'volume'>((water * waterDensity(celsius) + mass) / answer.density),
  };
}

/**
 * The strongest solution that both solubility and density table cover; null at a temperature outside them.
 */
export function strongest(salt: ShelfSalt, temperature: Temperature): Mixed | null {
  const litre = si<'volume'>(1e-3);
  const most = mostStrength(salt, temperature);
  const saturated = isRefused(most)
    ? most
    : mix(salt, { water: litre, strength: most.strength }, temperature);
  if (!isRefused(saturated)) return saturated;
  const last = mix(salt, { water: litre, massPercent: ends(salt.facts.density)[1] }, temperature);
  return isRefused(last) ? null : last;
}

/**
 * Salt and water for a volume of finished solution, to make a fresh bath.
 * @param strength g of the solid as bought per litre of water
 */
export function mixVolume(
  salt: ShelfSalt,
  volume: Volume,
  strength: MassConcentration,
  temperature: Temperature,
): Mixed | SolutionRefusal {
  const litre = mix(salt, { water: si<'volume'>(1e-3), strength }, temperature);
  if (isRefused(litre)) return litre;
  const water = si<'volume'>((1e-3 * volume) / litre.volume);
  return mix(salt, { water, strength }, temperature);
}
