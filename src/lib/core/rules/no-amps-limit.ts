import type { WarningRule } from './rule.ts';

/** Amps that many small supplies cannot give, A. */
const MUCH = 3;

/** A supply whose limit was not given, and a cell that would draw more than small ones have. */
export const noAmpsLimit = {
  id: 'no-amps-limit',
  kind: 'watch',
  step: 'settings',
  signal: 'CAUTION',
  sources: ['tradePractice'],
  applies: ({ supply, figures }) => {
    const { current } = figures;
    return supply.control === 'volts' && supply.maxAmps === null && current && current.high > MUCH
      ? { current }
      : null;
  },
} as const satisfies WarningRule;
