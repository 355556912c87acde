import { findBoughtSalt } from '../facts/salts.ts';
import type { Block } from './rule.ts';

/** Salts that are known but make no bath here. */
export const saltNoBath = {
  id: 'salt-no-bath',
  kind: 'block',
  step: 'electrolyte',
  sources: ['memory'],
  applies: ({ bath }) =>
    findBoughtSalt(bath.salt) === null && bath.salt !== 'NH4NO3' ? { salt: bath.salt } : null,
} as const satisfies Block;
