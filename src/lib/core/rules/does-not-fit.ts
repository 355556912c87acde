import { misfit } from '../cell/tub.ts';
import type { Block } from './rule.ts';

/** The parts cannot hang in this tub. */
export const doesNotFit = {
  id: 'does-not-fit',
  kind: 'block',
  step: 'electrodes',
  sources: ['memory'],
  applies: ({ piece, cathode, tub }) => {
    const reason = misfit(piece, cathode, tub);
    return reason === null ? null : { misfit: reason };
  },
} as const satisfies Block;
