import { isBitable, metals } from '../facts/metals.ts';
import { lead } from '../facts/selling.ts';
import type { WarningRule } from './rule.ts';

/** Lead from the brass goes into the bath and its sludge. It harms unborn children and the brain. */
export const leadedBrass = {
  id: 'leaded-brass',
  kind: 'watch',
  step: 'metal',
  signal: 'WARNING',
  sources: ['leadedBrass', 'clpAnnexVI'],
  applies: ({ piece }) => {
    if (!isBitable(piece.metal)) return null;
    const { massPercent } = metals[piece.metal].composition;
    const share = 'Pb' in massPercent ? massPercent.Pb : 0;
    return share > lead.value ? { metal: piece.metal, share: { value: share, unit: '%' } } : null;
  },
} as const satisfies WarningRule;
