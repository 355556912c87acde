import type { WarningRule } from './rule.ts';

/** The plate gives off hydrogen: under a lid it makes an explosive mixture within minutes. */
export const hydrogenLid = {
  id: 'hydrogen-lid',
  kind: 'watch',
  step: 'etch',
  signal: 'WARNING',
  sources: ['hydrogenLimit', 'batteryVent'],
  applies: ({ figures }) => {
    const { hydrogen, minutes_to_4_percent_in_1_L: minutes } = figures;
    return hydrogen && minutes ? { hydrogen, minutes } : null;
  },
} as const satisfies WarningRule;
