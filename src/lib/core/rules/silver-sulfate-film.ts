import { findBoughtSalt } from '../facts/salts.ts';
import { isSilver } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Silver sulfate dissolves poorly, so above a moderate current a film covers the piece. */
export const silverSulfateFilm = {
  id: 'silver-sulfate-film',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['budgetEstimate'],
  applies: (situation) =>
    isSilver(situation) && findBoughtSalt(situation.bath.salt)?.facts.anion === 'sulfate' ? {} : null,
} as const satisfies WarningRule;
