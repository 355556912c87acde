import { coversSolubility, solubility } from '../chemistry/solution.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import type { RefusalRule } from './rule.ts';

/** More salt than dissolves in the water at bath temperature. */
export const aboveSolubility = {
  id: 'above-solubility',
  kind: 'block',
  step: 'electrolyte',
  sources: ['crcSolubility'],
  applies: ({ bath }) => {
    const salt = findBoughtSalt(bath.salt);
    if (salt === null || !coversSolubility(salt, bath.temperature)) return null;
    const most = solubility(salt, bath.temperature);
    return bath.strength <= most
      ? null
      : { strength: { value: bath.strength, unit: 'g/L' }, most: { value: most, unit: 'g/L' } };
  },
} as const satisfies RefusalRule;
