import { hasChloride, isSilver } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/**
 * In chloride, silver covers itself with silver chloride: it does not bite, and the film turns black in
 * light.
 */
export const chlorideOnSilver = {
  id: 'chloride-on-silver',
  kind: 'block',
  step: 'electrolyte',
  sources: ['silverChloride'],
  applies: (situation) => (isSilver(situation) && hasChloride(situation) ? {} : null),
} as const satisfies RefusalRule;
