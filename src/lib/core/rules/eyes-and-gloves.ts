import type { WarningRule } from './rule.ts';

/** Goggles and gloves before the salt is handled: every one of these salts is worse in an eye than water. */
export const eyesAndGloves = {
  id: 'eyes-and-gloves',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'WARNING',
  sources: ['clpAnnexVI', 'sdsSodiumNitrate', 'sdsPotassiumNitrate', 'argyria'],
  applies: ({ bath }) => ({ salt: bath.salt }),
} as const satisfies WarningRule;
