import { isBitable, refusedMetals } from '../facts/metals.ts';
import type { RefusalRule } from './rule.ts';

/** Chromium on the + side dissolves as chromate, which causes cancer. */
export const chromiumAnode = {
  id: 'chromium-anode',
  kind: 'block',
  step: 'metal',
  sources: ['cr6Transpassive'],
  applies: ({ piece }) =>
    isBitable(piece.metal) || refusedMetals[piece.metal] !== 'chromiumBearing'
      ? null
      : { metal: piece.metal },
} as const satisfies RefusalRule;
