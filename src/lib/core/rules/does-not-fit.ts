import { misfit, remedyFor } from '../cell/tub.ts';
import type { Remedy } from '../cell/tub.ts';
import type { Amount, RefusalRule } from './rule.ts';

const bounds: Readonly<Record<Remedy['way'], NonNullable<Amount['bound']>>> = {
  'fill-to': 'least',
  'tub-across': 'least',
  'tub-long': 'least',
  'tub-holds': 'least',
  'plate-narrow': 'most',
  'plate-near': 'most',
  'hang-most': 'most',
};

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
    return { misfit: reason, way, amount: { ...amount, bound: bounds[way] } };
  },
} as const satisfies RefusalRule;
