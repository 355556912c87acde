import { lawFor } from '../facts/law.ts';
import { saltIdOf } from '../facts/salts.ts';
import type { WarningRule } from './rule.ts';

/**
 * Sellers must report suspicious sales of this salt, and the buyer must report a theft: keep a small,
 * labelled, locked stock.
 */
export const buyingIsWatched = {
  id: 'buying-is-watched',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['regulation2019_1148', 'poisonsActPart3'],
  applies: ({ bath, place }) => {
    const salt = saltIdOf(bath.salt);
    if (salt === null || place.country === null || bath.record !== null) return null;
    const reported = lawFor('buying', place.country, salt).some(({ effect }) => effect === 'reported');
    return reported ? { salt: bath.salt } : null;
  },
} as const satisfies WarningRule;
