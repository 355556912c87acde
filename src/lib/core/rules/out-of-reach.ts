import type { WarningRule } from './rule.ts';

/** Baths look like drinks: no food containers, out of reach, labelled. */
export const outOfReach = {
  id: 'out-of-reach',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['homePoisoning'],
  applies: () => ({}),
} as const satisfies WarningRule;
