import type { WarningRule } from './rule.ts';

/** Low voltage does not shock, but a ring or a wet clip across the leads burns and sparks. */
export const clipsDry = {
  id: 'clips-dry',
  kind: 'watch',
  step: 'electrodes',
  signal: 'CAUTION',
  sources: ['selv', 'tradePractice'],
  applies: () => ({}),
} as const satisfies WarningRule;
