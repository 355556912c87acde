import { bathFrom, dissolve, saltFor, solubility, waterFor } from '../chemistry/solution.ts';
import type { Solution } from '../chemistry/solution.ts';
import type { Setup } from '../cell/setup.ts';
import { boxOf, displaced } from '../cell/tub.ts';
import type { BoughtSalt } from '../facts/salts.ts';
import { si } from '../units/quantity.ts';
import type { MassConcentration } from '../units/quantity.ts';
import type { Draw } from './budget.ts';
import type { OutcomeWith } from './outcome.ts';

/** What the recipe alone decides; the same in every draw. */
export interface Recipe {
  readonly solution: Solution;
  readonly solubility: MassConcentration;
}

export const recipeOf = ({ bath }: Setup, salt: BoughtSalt): Recipe => ({
  solution: dissolve(salt, bath.strength, bath.temperature),
  solubility: solubility(salt, bath.temperature),
});

/** What a bath is, once it is mixed. */
export type BathOutcome = OutcomeWith<
  | 'water_volume'
  | 'bath_volume'
  | 'salt_mass'
  | 'mass_percent'
  | 'molarity'
  | 'density'
  | 'solubility'
  | 'conductivity'
>;

/**
 * Bath figures: known as soon as tub, salt and strength are.
 * @returns the chain, for one draw after another
 */
export function bathChain(setup: Setup, recipe: Recipe) {
  const { bath, tub, piece, cathode } = setup;
  const { solution } = recipe;
  const box = boxOf(tub);
  const wanted = si<'volume'>(box.floor * box.fill - displaced(piece, cathode, tub));
  const water = tub.kind === 'jug' ? tub.water : waterFor(wanted, solution, bath.strength, bath.temperature);
  return (draw: Draw): BathOutcome => {
    const poured = si<'volume'>(water * draw.volumeFactor);
    return {
      water_volume: poured * 1e6,
      bath_volume: bathFrom(poured, solution, bath.strength, bath.temperature) * 1e6,
      salt_mass: saltFor(poured, bath.strength) * 1e3,
      mass_percent: solution.massPercent,
      molarity: solution.molarity,
      density: solution.density / 1e3,
      solubility: recipe.solubility,
      conductivity: solution.conductivity * 10 * draw.conductivityFactor,
    };
  };
}
