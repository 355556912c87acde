import { isBitable, refusedMetals } from '../facts/metals.ts';
import type { RefusalRule } from './rule.ts';

/** No tables for this metal: no plan is better than a guess. */
export const metalWithoutData = {
  id: 'metal-without-data',
  kind: 'block',
  step: 'metal',
  sources: ['memory'],
  applies: ({ piece }) =>
    isBitable(piece.metal) || refusedMetals[piece.metal] !== 'noData' ? null : { metal: piece.metal },
} as const satisfies RefusalRule;
