import { findBoughtSalt } from '../facts/salts.ts';
import { bathHoldsSilver } from './asks.ts';
import type { Watch } from './rule.ts';

/** Which pair of dangers a bath carries. @param salt id as bought */
export const neverFamily = (holdsSilver: boolean, salt: string): string =>
  holdsSilver ? 'never-silver' : `never-${findBoughtSalt(salt)?.facts.anion ?? 'nitrate'}`;

/** What a used bath must never meet: acid and bleach for chloride, ammonia for silver, acid and paper for nitrate. */
export const neverMix = {
  id: 'never-mix',
  kind: 'watch',
  step: 'bath',
  signal: 'WARNING',
  sources: ['memory', 'fulminating', 'bleachText'],
  applies: (situation) => ({ family: neverFamily(bathHoldsSilver(situation), situation.bath.salt) }),
} as const satisfies Watch;
