import type { WarningRule } from './rule.ts';

/** Baths look like drinks: never use food containers, label them, and keep them out of reach. */
export const outOfReach = {
  id: 'out-of-reach',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['homePoisoning'],
  applies: () => ({}),
} as const satisfies WarningRule;
