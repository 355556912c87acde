import { isBitable, metals } from '../facts/metals.ts';
import { passiveIn } from '../facts/pairing-facts.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import type { RefusalRule } from './rule.ts';

/** The metal passivates in this bath: the current makes gas and nothing dissolves. */
export const passiveMetal = {
  id: 'passive-metal',
  kind: 'block',
  step: 'electrolyte',
  sources: ['nickelPassive', 'steelNitrate'],
  applies: ({ piece, bath }) => {
    const anion = findBoughtSalt(bath.salt)?.facts.anion;
    if (anion === undefined || !isBitable(piece.metal)) return null;
    const passive = passiveIn[metals[piece.metal].family]?.[anion];
    return passive ? { metal: piece.metal, salt: bath.salt } : null;
  },
} as const satisfies RefusalRule;
