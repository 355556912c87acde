import type { WarningRule } from './rule.ts';

/**
 * Bath, first rinse and sludge contain metal: none of it goes down a drain, and diluting does not change
 * that.
 */
export const nothingDownDrain = {
  id: 'nothing-down-drain',
  kind: 'watch',
  step: 'bath',
  signal: 'NOTICE',
  sources: ['sewerLimits'],
  applies: () => ({}),
} as const satisfies WarningRule;
