import type { WarningRule } from './rule.ts';

/**
 * In a class somebody is responsible: for who starts the supply, who must stay away, and whose permission is
 * asked.
 */
export const classInCharge = {
  id: 'class-in-charge',
  kind: 'watch',
  step: 'settings',
  signal: 'WARNING',
  sources: ['teachingPractice'],
  applies: ({ place }) => (place.use === 'teaching' ? {} : null),
} as const satisfies WarningRule;
