import { isSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** A piece for sale must not have a mark etched on it, and is weighed after etching. */
export const marksAndSale = {
  id: 'marks-and-sale',
  kind: 'watch',
  step: 'metal',
  signal: 'NOTICE',
  sources: ['hallmarkLaw'],
  applies: (situation) =>
    situation.place.use === 'selling' ? { family: isSilver(situation) ? 'sale-silver' : 'sale-other' } : null,
} as const satisfies WarningRule;
