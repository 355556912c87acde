import { hasNitrate, bathHoldsSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** A nitrate bath slowly makes ammonia at the plate; with silver, a black crust may explode. */
export const silverBathAges = {
  id: 'silver-bath-ages',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['fulminating', 'nitrateReduction'],
  applies: (situation) => (bathHoldsSilver(situation) && hasNitrate(situation) ? {} : null),
} as const satisfies WarningRule;
