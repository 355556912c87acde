import type { RefusalRule } from './rule.ts';

/**
 * Ammonium nitrate is an explosives precursor, closed to the public in many countries, and not needed here.
 */
export const ammoniumNitrate = {
  id: 'ammonium-nitrate',
  kind: 'block',
  step: 'electrolyte',
  sources: ['regulation2019_1148'],
  applies: ({ bath }) => (bath.salt === 'NH4NO3' ? {} : null),
} as const satisfies RefusalRule;
