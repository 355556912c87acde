import { hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Nitrate feeds fire: a towel wet with it burns like touch-paper once dry. */
export const nitrateTinder = {
  id: 'nitrate-tinder',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'WARNING',
  sources: ['nitrateTinder', 'sdsSodiumNitrate'],
  applies: (situation) => (hasNitrate(situation) ? {} : null),
} as const satisfies WarningRule;
