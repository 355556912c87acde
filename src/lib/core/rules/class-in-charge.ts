import type { WarningRule } from './rule.ts';

/** In a class somebody answers for the others: who starts the supply, who must not be near, who was asked. */
export const classInCharge = {
  id: 'class-in-charge',
  kind: 'watch',
  step: 'settings',
  signal: 'WARNING',
  sources: ['teachingPractice'],
  applies: ({ place }) => (place.use === 'teaching' ? {} : null),
} as const satisfies WarningRule;
