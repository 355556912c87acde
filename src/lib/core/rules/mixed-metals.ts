import { isSilver } from './asks.ts';
import type { Block } from './rule.ts';

/** Copper and brass take silver out of the bath as a loose film: one bath for each metal group. */
export const mixedMetals = {
  id: 'mixed-metals',
  kind: 'block',
  step: 'electrolyte',
  sources: ['standardPotentials', 'tradePractice'],
  applies: (situation) =>
    !isSilver(situation) && (situation.bath.dissolved.Ag ?? 0) > 0 ? { metal: situation.piece.metal } : null,
} as const satisfies Block;
