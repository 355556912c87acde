import type { WarningRule } from './rule.ts';

/**
 * In a class one person is responsible: for who starts the supply, who must stay away, and who was asked
 * about health.
 */
export const classInCharge = {
  id: 'class-in-charge',
  kind: 'watch',
  step: 'settings',
  signal: 'WARNING',
  sources: ['teachingPractice'],
  applies: ({ place }) => (place.use === 'teaching' ? {} : null),
} as const satisfies WarningRule;
