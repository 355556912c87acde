import type { WarningRule } from './rule.ts';

/** Stainless steel may only be on the − side: with the clips swapped it gives off chromate. */
export const stainlessPlate = {
  id: 'stainless-plate',
  kind: 'watch',
  step: 'electrodes',
  signal: 'WARNING',
  sources: ['cr6Transpassive'],
  applies: ({ cathode }) => (cathode.metal === 'stainless' ? {} : null),
} as const satisfies WarningRule;
