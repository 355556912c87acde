import { hasChloride, hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** What clings to the piece meets acid in the pickle: nitrogen oxides from nitrate, chlorine from used salt water. */
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
