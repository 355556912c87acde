import { isBitable, refusedMetals } from '../facts/metals.ts';
import type { Block } from './rule.ts';

/** Gold, plated, galvanised, cadmium-bearing or unknown stock. */
export const unsuitableStock = {
  id: 'unsuitable-stock',
  kind: 'block',
  step: 'metal',
  sources: ['tradePractice', 'memory'],
  applies: ({ piece }) => {
    if (isBitable(piece.metal)) return null;
    const reason = refusedMetals[piece.metal];
    return reason === 'chromiumBearing' || reason === 'noData' ? null : { metal: piece.metal };
  },
} as const satisfies Block;
