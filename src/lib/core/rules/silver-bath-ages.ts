import { hasNitrate, bathHoldsSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** The plate slowly turns nitrate into ammonia, which with silver can form a black crust that explodes. */
export const silverBathAges = {
  id: 'silver-bath-ages',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['fulminating', 'nitrateReduction'],
  applies: (situation) => (bathHoldsSilver(situation) && hasNitrate(situation) ? {} : null),
} as const satisfies WarningRule;
