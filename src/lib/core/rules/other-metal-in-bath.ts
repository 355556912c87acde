import { metalGroups, sharedInJar } from '../facts/metal-groups.ts';
import { isBitable, metals } from '../facts/metals.ts';
import type { WarningRule } from './rule.ts';

/**
 * The bath contains a metal that neither this piece nor its group gives off, so its jar may be the wrong one.
 */
export const otherMetalInBath = {
  id: 'other-metal-in-bath',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'NOTICE',
  sources: ['memory'],
  applies: ({ piece, bath }) => {
    if (!isBitable(piece.metal)) return null;
    const { family, composition } = metals[piece.metal];
    const expected = new Set([...Object.keys(composition.massPercent), ...sharedInJar[metalGroups[family]]]);
    return Object.entries(bath.dissolved).some(([element, amount]) => amount > 0 && !expected.has(element))
      ? {}
      : null;
  },
} as const satisfies WarningRule;
