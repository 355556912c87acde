import { nobler } from '../chemistry/displacement.ts';
import { isBitable, metals } from '../facts/metals.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import type { RefusalRule } from './rule.ts';

/**
 * Any nobler metal in the bath plates onto the piece as a loose film while no current flows. So each metal
 * group needs a bath of its own.
 */
export const mixedMetals = {
  id: 'mixed-metals',
  kind: 'block',
  step: 'electrolyte',
  sources: ['standardPotentials', 'tradePractice'],
  applies: ({ piece, bath }) => {
    if (!isBitable(piece.metal)) return null;
    const { massPercent } = metals[piece.metal].composition;
    const held = (Object.entries(bath.dissolved) as [ElementSymbol, number][])
      .filter(([, amount]) => amount > 0)
      .map(([element]) => element);
    const settles = held.find((element) => nobler(element, massPercent));
    return settles === undefined ? null : { metal: piece.metal, held: `element-${settles}` };
  },
} as const satisfies RefusalRule;
