import { hasChloride, hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/**
 * Bath left on the piece reacts with the acid of the pickle: nitrate gives nitrogen oxides, used salt water
 * gives chlorine.
 */
export const rinseBeforePickle = {
  id: 'rinse-before-pickle',
  kind: 'watch',
  step: 'neutralise',
  signal: 'WARNING',
  sources: ['memory'],
  applies: (situation) => {
    if (hasNitrate(situation)) return { family: 'pickle-nitrate' };
    return hasChloride(situation) ? { family: 'pickle-chloride' } : null;
  },
} as const satisfies WarningRule;
