import type { RefusalRule } from './rule.ts';

/** Every bath gives off hydrogen, and salt water may give chlorine: a room that nothing leaves is no place for it. */
export const noOpening = {
  id: 'no-opening',
  kind: 'block',
  step: 'metal',
  sources: ['hydrogenLimit', 'batteryVent'],
  applies: ({ place }) => (place.openings === 'none' ? {} : null),
} as const satisfies RefusalRule;
