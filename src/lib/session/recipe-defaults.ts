import { isBitable, metals } from '../core/facts/metals.ts';
import { blankDraft } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';

type Recipe = Pick<Draft, 'bath.salt' | 'bath.strength' | 'bath.water'>;

/** Usual strengths, g per litre of water: common practice, without a source. */
const usualStrengths: Readonly<Record<string, number>> = {
  NaNO3: 60,
  KNO3: 60,
  NaCl: 50,
  'CuSO4.5H2O': 100,
  Na2SO4: 60,
};

export const usualStrength = (salt: string): number | null => usualStrengths[salt] ?? null;

/** A salt with its usual strength, and the simplest water that does it no harm. */
export function recipeOf(salt: string): Recipe {
  return {
    'bath.salt': salt,
    'bath.strength': String(usualStrength(salt) ?? blankDraft['bath.strength']),
    // a chloride bath is not harmed by the chloride in tap water; other baths become cloudy
    'bath.water': salt === 'NaCl' ? 'tap' : 'deionised',
  };
}

const fields: readonly FieldId[] = ['bath.salt', 'bath.strength', 'bath.water'];

/**
 * The recipe that suits the metal, as long as the maker has not chosen one.
 * @returns the fields to set; null when the maker chose the recipe, or it already suits this metal
 */
export function proposedRecipe(draft: Draft): (Recipe & Pick<Draft, 'bath.for'>) | null {
  const metal = draft['piece.metal'];
  const proposedFor = draft['bath.for'];
  if (!isBitable(metal) || proposedFor === 'own' || draft['bath.from'] === 'shelf') return null;
  const { family } = metals[metal];
  if (family === proposedFor) return null;
  // a job copied from a plan has a recipe, although nobody chose it on screen
  const isBlank = fields.every((field) => draft[field] === blankDraft[field]);
  if (proposedFor === '' && !isBlank) return null;
  return { ...recipeOf(family === 'silver' ? 'NaNO3' : 'NaCl'), 'bath.for': family };
}
