import type { WarningRule } from './rule.ts';

/** Stainless steel is for the − side only: a swapped clip turns it into a source of chromate. */
export const stainlessPlate = {
  id: 'stainless-plate',
  kind: 'watch',
  step: 'electrodes',
  signal: 'WARNING',
  sources: ['cr6Transpassive'],
  applies: ({ cathode }) => (cathode.metal === 'stainless' ? {} : null),
} as const satisfies WarningRule;
