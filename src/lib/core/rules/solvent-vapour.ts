import { resistFacts } from '../facts/resists.ts';
import { hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/** Solvent vapour catches fire at a spark; nitrate makes it worse. */
export const solventVapour = {
  id: 'solvent-vapour',
  kind: 'watch',
  step: 'neutralise',
  signal: 'WARNING',
  sources: ['clpAnnexVI'],
  applies: (situation) => {
    const { remover } = resistFacts[situation.resist];
    return remover === null ? null : { remover: hasNitrate(situation) ? `${remover}-nitrate` : remover };
  },
} as const satisfies WarningRule;
