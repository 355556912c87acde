import { isBitable, refusedMetals } from '../facts/metals.ts';
import type { RefusalRule } from './rule.ts';

/** There are no data for this metal, and a guess would be worse than no plan. */
export const metalWithoutData = {
  id: 'metal-without-data',
  kind: 'block',
  step: 'metal',
  sources: ['memory'],
  applies: ({ piece }) =>
    isBitable(piece.metal) || refusedMetals[piece.metal] !== 'noData' ? null : { metal: piece.metal },
} as const satisfies RefusalRule;
