import { findBoughtSalt } from '../facts/salts.ts';
import { bathHoldsSilver } from './asks.ts';
import type { Situation } from './rule.ts';
import type { Watch } from './rule.ts';

/** Which pair of dangers the bath carries. */
function familyOf(situation: Situation): string {
  if (bathHoldsSilver(situation)) return 'never-silver';
  const anion = findBoughtSalt(situation.bath.salt)?.facts.anion ?? 'nitrate';
  return `never-${anion}`;
}

/** What a used bath must never meet: acid and bleach for chloride, ammonia for silver, acid and paper for nitrate. */
export const neverMix = {
  id: 'never-mix',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['memory', 'fulminating', 'bleachText'],
  applies: (situation) => ({ family: familyOf(situation) }),
} as const satisfies Watch;
