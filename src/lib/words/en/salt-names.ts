import { refusedSalts, shelfSalt } from '../../core/facts/salts.ts';
import type { BathSalt, RefusedSalt, SaltId, ShelfSaltId } from '../../core/facts/salts.ts';
import { count } from './locale.ts';
import { whyText } from './pairings.ts';
import { saltNames } from './materials.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const isNamed = (id: ShelfSaltId): id is SaltId => Object.hasOwn(saltNames, id);
const isRefused = (id: BathSalt | RefusedSalt): id is RefusedSalt => Object.hasOwn(refusedSalts, id);

/** A salt in the form in which it is sold: "Zinc sulfate, crystals with 7 waters". */
export function saltName(id: ShelfSaltId): string {
  const { hydrate, facts, base } = shelfSalt(id);
  if (isNamed(id)) {
    const name = capital(saltNames[id]);
    return hydrate === null && facts.hydrates.length > 0 && !name.startsWith('Anhydrous')
      ? `${name}, water-free`
      : name;
  }
  return `${capital(saltNames[base])}, crystals with ${count(hydrate?.waters ?? 0, 'water')}`;
}

/** Why a salt is not used for a bath here; null for one that is. */
export function saltRefusal(id: ShelfSaltId): string | null {
  const { base } = shelfSalt(id);
  return isRefused(base) ? whyText(`salt-${refusedSalts[base]}`) : null;
}
