import { findSalt, refusedSalts } from '../../core/facts/salts.ts';
import { count } from './locale.ts';
import { whyText } from './pairings.ts';
import { terms } from './terms.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A salt in the form it is bought in: "Zinc sulfate, crystals with 7 waters". */
export function saltName(id: string): string {
  const salt = findSalt(id);
  if (salt === null || terms[id] !== undefined) {
    const name = capital(terms[id] ?? id);
    return salt && salt.hydrate === null && salt.facts.hydrates.length > 0 && !name.startsWith('Anhydrous')
      ? `${name}, water-free`
      : name;
  }
  const waters = salt.hydrate?.waters ?? 0;
  return `${capital(terms[salt.facts.id] ?? id)}, crystals with ${count(waters, 'water')}`;
}

/** Why a salt makes no bath here; null for one that does. */
export function saltRefusal(id: string): string | null {
  const base = findSalt(id)?.facts.id ?? id;
  return base in refusedSalts ? whyText(`salt-${refusedSalts[base as keyof typeof refusedSalts]}`) : null;
}
