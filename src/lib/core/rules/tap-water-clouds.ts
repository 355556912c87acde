import { isSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Chloride in tap water takes silver out of the bath as a cloud and films the piece. */
export const tapWaterClouds = {
  id: 'tap-water-clouds',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['silverChloride', 'tradePractice'],
  applies: (situation) => (isSilver(situation) && situation.bath.water === 'tap' ? {} : null),
} as const satisfies WarningRule;
