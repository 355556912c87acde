import { misfit, remedyFor } from '../cell/tub.ts';
import type { Block } from './rule.ts';

/** The parts cannot hang in this tub. */
export const doesNotFit = {
  id: 'does-not-fit',
  kind: 'block',
  step: 'electrodes',
  sources: ['memory'],
  applies: ({ piece, cathode, tub }) => {
    const reason = misfit(piece, cathode, tub);
    if (reason === null || tub.kind === 'jug') return null;
    const { way, amount } = remedyFor(reason, piece, cathode, tub);
    return { misfit: reason, way, amount };
  },
} as const satisfies Block;
