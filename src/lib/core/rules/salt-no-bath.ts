import { findBoughtSalt, refusedSalts, saltIdOf } from '../facts/salts.ts';
import type { RefusalRule } from './rule.ts';

/** Salts that are known but cannot make a bath, each with its reason. */
export const saltNoBath = {
  id: 'salt-no-bath',
  kind: 'block',
  step: 'electrolyte',
  sources: ['memory', 'phreeqcMinteq'],
  applies: ({ bath }) => {
    if (findBoughtSalt(bath.salt) !== null || bath.salt === 'NH4NO3') return null;
    const id = saltIdOf(bath.salt);
    const reason =
      id !== null && id in refusedSalts ? refusedSalts[id as keyof typeof refusedSalts] : 'poorBath';
    return { salt: bath.salt, why: `salt-${reason}` };
  },
} as const satisfies RefusalRule;
