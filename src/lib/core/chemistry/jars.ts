import { ends } from './curve.ts';
import { densityOf, isRefused, mix } from './solutions.ts';
import type { Mixed, SolutionRefusal } from './solutions.ts';
import type { ShelfSalt } from '../facts/salts.ts';
import { RANGE_Z } from '../units/range.ts';
import { celsiusOf, si } from '../units/quantity.ts';
import type { Mass, MassConcentration, Temperature, Volume } from '../units/quantity.ts';
import { strengthAt } from './strength.ts';

/** What to add to a solution, and the solution that results. */
export interface JarChange {
  /** solid as bought, kg; 0 when only water is added */
  readonly addSalt: Mass;
  /** m³; 0 when only salt is added */
  readonly addWater: Volume;
  readonly after: Mixed;
}

/**
 * Water that brings an evaporated bath back to its level. All the salt is still in it; only water has left.
 * @param left volume that is there now
 */
export function topUp(
  salt: ShelfSalt,
  before: Mixed,
  left: Volume,
  temperature: Temperature,
): JarChange | SolutionRefusal {
  if (left >= before.volume) return { refused: 'alreadyThere' };
  const withWater = (water: number) =>
    mix(salt, { salt: before.salt, water: si<'volume'>(water) }, temperature);
  let [low, high] = [0, before.water as number];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    const now = withWater(middle);
    // a solution too strong for the tables has less water than the one we look for
    if (isRefused(now) || now.volume < left) low = middle;
    else high = middle;
  }
  const now = withWater(low);
  if (isRefused(now)) return now;
  return { addSalt: si<'mass'>(0), addWater: si<'volume'>(before.water - now.water), after: before };
}

/** Salt that takes a solution to a higher strength. */
export function strengthen(
  salt: ShelfSalt,
  before: Mixed,
  strength: MassConcentration,
  temperature: Temperature,
): JarChange | SolutionRefusal {
  if (strength <= before.strength) return { refused: 'alreadyThere' };
  const after = mix(salt, { water: before.water, strength }, temperature);
  if (isRefused(after)) return after;
  return { addSalt: si<'mass'>(after.salt - before.salt), addWater: si<'volume'>(0), after };
}

/** Water that takes a solution to a lower strength. */
export function dilute(
  salt: ShelfSalt,
  before: Mixed,
  strength: MassConcentration,
  temperature: Temperature,
): JarChange | SolutionRefusal {
  if (strength >= before.strength || strength <= 0) return { refused: 'alreadyThere' };
  const after = mix(salt, { salt: before.salt, strength }, temperature);
  if (isRefused(after)) return after;
  return { addSalt: si<'mass'>(0), addWater: si<'volume'>(after.water - before.water), after };
}

/** A weighed jar, with standard deviations, kg and m³. */
export interface Weighing {
  readonly mass: Mass;
  readonly volume: Volume;
  readonly massError: Mass;
  readonly volumeError: Volume;
}

/**
 * A jar weighed on a maker's scale. The errors of scale and vessel are taken as two standard deviations.
 * @param scale error of the scale, kg
 * @param vessel error of the vessel, % of the volume
 */
export const weighingWith = (mass: Mass, volume: Volume, scale: Mass, vessel: number): Weighing => ({
  mass,
  volume,
  massError: si<'mass'>(scale / 2),
  volumeError: si<'volume'>((volume * vessel) / 200),
});

/** A value with its likely range. */
export interface FoundStrength {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Mass % at a density, kg/m³; beyond the table, the nearest end of it. */
function percentAtDensity(
  salt: ShelfSalt,
  density: number,
  temperature: Temperature,
): number | SolutionRefusal {
  let [low, high] = ends(salt.facts.density);
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    const answer = densityOf(salt, middle, temperature);
    if (isRefused(answer)) return answer;
    if (answer.density < density) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Strength of a jar from the weight of a measured volume (100 mL is enough). Valid only for one salt in
 * water: metal in a used bath adds weight.
 * @returns mass % anhydrous and g of the bought solid per litre of water, each with its range; a refusal that
 *   names the range of densities when the weight is outside it by more than its error
 */
export function strengthByWeight(
  salt: ShelfSalt,
  weighing: Weighing,
  temperature: Temperature,
): { readonly massPercent: FoundStrength; readonly strength: FoundStrength } | SolutionRefusal {
  const density = weighing.mass / weighing.volume;
  const error =
    density * Math.hypot(weighing.massError / weighing.mass, weighing.volumeError / weighing.volume);
  const [thinnest, strongest] = ends(salt.facts.density);
  const bottom = densityOf(salt, thinnest, temperature);
  const top = densityOf(salt, strongest, temperature);
  if (isRefused(bottom)) return bottom;
  if (isRefused(top)) return top;
  if (density + RANGE_Z * error < bottom.density || density - RANGE_Z * error > top.density)
    return {
      refused: 'outside',
      quantity: 'density',
      unit: 'kg/m3',
      found: density,
      low: bottom.density,
      high: top.density,
      nearest: density < bottom.density ? bottom.density : top.density,
    };
  const percents = [density, density - RANGE_Z * error, density + RANGE_Z * error].map((one) =>
    percentAtDensity(salt, one, temperature),
  );
  const numbers = percents.filter((one) => typeof one === 'number');
  const refusal = percents.find((one) => typeof one !== 'number');
  if (refusal !== undefined) return refusal;
  const [value, low, high] = numbers as [number, number, number];
  const strength = (percent: number): number => strengthAt(salt, percent / 100, celsiusOf(temperature));
  return {
    massPercent: { value, low, high },
    strength: { value: strength(value), low: strength(low), high: strength(high) },
  };
}
