import { hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Nitrate feeds a fire: a towel soaked with it burns fiercely once dry. */
export const nitrateTinder = {
  id: 'nitrate-tinder',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'WARNING',
  sources: ['nitrateTinder', 'sdsSodiumNitrate'],
  applies: (situation) => (hasNitrate(situation) ? {} : null),
} as const satisfies WarningRule;
