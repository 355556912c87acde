import { isSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Chloride in tap water settles silver from the bath as a cloud, and a film covers the piece. */
export const tapWaterClouds = {
  id: 'tap-water-clouds',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['silverChloride', 'tradePractice'],
  applies: (situation) => (isSilver(situation) && situation.bath.water === 'tap' ? {} : null),
} as const satisfies WarningRule;
