import { bathHoldsSilver, neverFamily } from './asks.ts';
import type { WarningRule } from './rule.ts';

/**
 * What a used bath must not be mixed with: acid and bleach for chloride, ammonia for silver, acid and paper
 * for nitrate.
 */
export const neverMix = {
  id: 'never-mix',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['memory', 'fulminating', 'bleachText'],
  applies: (situation) => ({ family: neverFamily(bathHoldsSilver(situation), situation.bath.salt) }),
} as const satisfies WarningRule;
