import { plateMetals, plateRefusals } from '../facts/cathodes.ts';
import type { RefusalRule } from './rule.ts';

/** A plate may be of the piece's own metal, copper, brass, silver or stainless steel. */
export const unfitPlate = {
  id: 'unfit-plate',
  kind: 'block',
  step: 'electrodes',
  sources: ['memory'],
  applies: ({ cathode: { metal }, piece }) => {
    const fits = (plateMetals as readonly string[]).includes(metal) || metal === piece.metal;
    if (metal === 'stainless' || fits) return null;
    return { metal, why: `plate-${plateRefusals[metal as keyof typeof plateRefusals]}` };
  },
} as const satisfies RefusalRule;
