import { hasChloride } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** A chloride bath in a room of unknown size: how much chlorine a fault would bring cannot be computed. */
export const chlorineRoomUnknown = {
  id: 'chlorine-room-unknown',
  kind: 'watch',
  step: 'etch',
  signal: 'WARNING',
  sources: ['scoel76'],
  applies: (situation) =>
    hasChloride(situation) && situation.place.room === null && situation.place.openings !== 'outdoors'
      ? {}
      : null,
} as const satisfies WarningRule;
