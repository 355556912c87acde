import { hasAmmonium, bathHoldsSilver } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/** Silver with ammonia can leave a crust that explodes at a touch. */
export const silverWithAmmonium = {
  id: 'silver-with-ammonium',
  kind: 'block',
  step: 'electrolyte',
  sources: ['fulminating'],
  applies: (situation) =>
    bathHoldsSilver(situation) && hasAmmonium(situation) ? { salt: situation.bath.salt } : null,
} as const satisfies RefusalRule;
