import { isBitable, metals } from '../facts/metals.ts';
import { lead } from '../facts/selling.ts';
import type { RefusalRule } from './rule.ts';

/** Jewellery with more lead than the law allows must not be made for sale. */
export const leadForSale = {
  id: 'lead-for-sale',
  kind: 'block',
  step: 'metal',
  sources: ['reachLead', 'leadedBrass'],
  applies: ({ piece, place }) => {
    if (place.use !== 'selling' || !isBitable(piece.metal)) return null;
    const { massPercent } = metals[piece.metal].composition;
    const share = 'Pb' in massPercent ? massPercent.Pb : 0;
    return share > lead.value
      ? { metal: piece.metal, most: { value: lead.value, unit: '%' }, share: { value: share, unit: '%' } }
      : null;
  },
} as const satisfies RefusalRule;
