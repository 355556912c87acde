import { isBitable, metals } from '../facts/metals.ts';
import { skinIn } from '../facts/pairing-facts.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import type { WarningRule } from './rule.ts';

/** Tin from the alloy stays on the piece as an oxide and slows the bite. */
export const tinSkin = {
  id: 'tin-skin',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['memory'],
  applies: ({ piece, bath }) => {
    const anion = findBoughtSalt(bath.salt)?.facts.anion;
    if (anion === undefined || !isBitable(piece.metal)) return null;
    return skinIn[metals[piece.metal].family]?.[anion] ? { metal: piece.metal } : null;
  },
} as const satisfies WarningRule;
