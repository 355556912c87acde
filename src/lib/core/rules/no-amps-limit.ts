import type { WarningRule } from './rule.ts';

/** More than this many small supplies cannot give, A. */
const MUCH = 3;

/** The supply's limit is not known, and the cell would draw more than small supplies can give. */
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
