import { isBitable, metals } from '../facts/metals.ts';
import type { WarningRule } from './rule.ts';

/** Nickel silver contains nickel: its salts cause allergies, and an etched surface releases more of it. */
export const nickelSkin = {
  id: 'nickel-skin',
  kind: 'watch',
  step: 'metal',
  signal: 'WARNING',
  sources: ['nickelAllergy', 'clpAnnexVI'],
  applies: ({ piece, place }) =>
    isBitable(piece.metal) && 'Ni' in metals[piece.metal].composition.massPercent
      ? { metal: piece.metal, use: `nickel-${place.use}` }
      : null,
} as const satisfies WarningRule;
