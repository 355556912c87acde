import { lawFor } from '../facts/law.ts';
import { saltIdOf } from '../facts/salts.ts';
import type { RefusalRule } from './rule.ts';

/** Where the law closes a salt to the public, it is not planned for use at home. */
export const saltClosedToPublic = {
  id: 'salt-closed-to-public',
  kind: 'block',
  step: 'electrolyte',
  sources: ['denmarkPrecursors'],
  applies: ({ bath, place }) => {
    const salt = saltIdOf(bath.salt);
    // ammonium nitrate has its own rule, which refuses it everywhere
    if (salt === null || salt === 'NH4NO3' || place.use !== 'home' || place.country === null) return null;
    const closed = lawFor('buying', place.country, salt).some(({ effect }) => effect === 'closed');
    return closed ? { salt: bath.salt, country: { text: place.country } } : null;
  },
} as const satisfies RefusalRule;
