import { hasChloride, isSilver } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/** Chloride seals silver under its own chloride: no bite, and a film that light turns black. */
export const chlorideOnSilver = {
  id: 'chloride-on-silver',
  kind: 'block',
  step: 'electrolyte',
  sources: ['silverChloride'],
  applies: (situation) => (isSilver(situation) && hasChloride(situation) ? {} : null),
} as const satisfies RefusalRule;
