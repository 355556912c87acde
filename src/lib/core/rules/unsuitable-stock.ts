import { isBitable, refusedMetals } from '../facts/metals.ts';
import type { RefusalRule } from './rule.ts';

/**
 * Gold, plated, galvanised, cadmium-bearing, passivating or unknown metal: each has its reason and what to do
 * instead.
 */
export const unsuitableStock = {
  id: 'unsuitable-stock',
  kind: 'block',
  step: 'metal',
  sources: ['tradePractice', 'memory'],
  applies: ({ piece }) => {
    if (isBitable(piece.metal)) return null;
    const reason = refusedMetals[piece.metal];
    return reason === 'chromiumBearing' || reason === 'noData'
      ? null
      : { metal: piece.metal, why: `stock-${reason}`, way: `way-${reason}` };
  },
} as const satisfies RefusalRule;
