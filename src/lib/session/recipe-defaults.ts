import { isBitable, metals } from '../core/facts/metals.ts';
import { blankDraft } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';

type Recipe = Pick<Draft, 'bath.salt' | 'bath.strength' | 'bath.water'>;

/** Usual strengths, g per litre of water. Common practice, no source. */
const usualStrengths: Readonly<Record<string, number>> = {
  NaNO3: 60,
  KNO3: 60,
  NaCl: 50,
  'CuSO4.5H2O': 100,
  Na2SO4: 60,
};

export const usualStrength = (salt: string): number | null => usualStrengths[salt] ?? null;

/** A salt with its usual strength, and the plainest water that does it no harm. */
export function recipeOf(salt: string): Recipe {
  return {
    'bath.salt': salt,
    'bath.strength': String(usualStrength(salt) ?? blankDraft['bath.strength']),
    // chloride is in the bath anyhow; any other bath is clouded by what a tap brings
    'bath.water': salt === 'NaCl' ? 'tap' : 'deionised',
  };
}

const fields: readonly FieldId[] = ['bath.salt', 'bath.strength', 'bath.water'];

/**
 * The recipe that suits the metal, while the maker has not chosen one.
 * @returns the fields to set; null when the recipe is the maker's own, or for this metal already
 */
export function proposedRecipe(draft: Draft): (Recipe & Pick<Draft, 'bath.for'>) | null {
  const metal = draft['piece.metal'];
  const proposedFor = draft['bath.for'];
  if (!isBitable(metal) || proposedFor === 'own' || draft['bath.from'] === 'shelf') return null;
  const { family } = metals[metal];
  if (family === proposedFor) return null;
  // a job copied from a plan has its recipe, though nobody chose it on screen
  const isBlank = fields.every((field) => draft[field] === blankDraft[field]);
  if (proposedFor === '' && !isBlank) return null;
  return { ...recipeOf(family === 'silver' ? 'NaNO3' : 'NaCl'), 'bath.for': family };
}
