import type { WarningRule } from './rule.ts';

/** Without an ammeter the charge cannot be counted. Only time remains, so look early. */
export const noAmmeter = {
  id: 'no-ammeter',
  kind: 'watch',
  step: 'settings',
  signal: 'NOTICE',
  sources: ['budgetEstimate'],
  applies: ({ supply }) => (supply.showsAmps ? null : {}),
} as const satisfies WarningRule;
