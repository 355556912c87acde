import { isBitable, metals } from '../facts/metals.ts';
import type { Watch } from './rule.ts';

/** Metals in the bath that this piece does not shed: the jar's metal group is no longer clear. */
export const otherMetalInBath = {
  id: 'other-metal-in-bath',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['memory'],
  applies: ({ piece, bath }) => {
    if (!isBitable(piece.metal)) return null;
    const own = Object.keys(metals[piece.metal].composition.massPercent);
    // copper and brass share a jar
    const group = metals[piece.metal].family === 'silver' ? own : [...own, 'Cu', 'Zn'];
    return Object.entries(bath.dissolved).some(([element, amount]) => amount > 0 && !group.includes(element))
      ? {}
      : null;
  },
} as const satisfies Watch;
