import type { WarningRule } from './rule.ts';

/** Goggles and gloves before the salt is handled: each of these salts harms the eyes. */
export const eyesAndGloves = {
  id: 'eyes-and-gloves',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'WARNING',
  sources: ['clpAnnexVI', 'sdsSodiumNitrate', 'sdsPotassiumNitrate', 'argyria'],
  applies: ({ bath }) => ({ salt: bath.salt }),
} as const satisfies WarningRule;
