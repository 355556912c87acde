import { boxOf, displaced } from '../cell/tub.ts';
import { retireAfter } from '../facts/treatment.ts';
import { AMPERE_HOUR } from '../units/constants.ts';
import { bathHoldsSilver, hasNitrate } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/**
 * A nitrate bath with silver must not be switched on again after it has passed its charge: its nitrate has
 * turned to ammonia, and silver with ammonia can leave a crust that explodes. The charge counts per litre of
 * this job's tub. The limit is the one of `bath-worn`, which warns of the run that crosses it.
 */
export const silverBathWorn = {
  id: 'silver-bath-worn',
  kind: 'block',
  step: 'electrolyte',
  sources: ['tradePractice', 'nitrateReduction'],
  applies: (situation) => {
    if (!bathHoldsSilver(situation) || !hasNitrate(situation)) return null;
    const { bath, piece, cathode, tub } = situation;
    const { length, width, fill } = boxOf(tub);
    const litres = 1e3 * (length * width * fill - displaced(piece, cathode, tub));
    if (!(litres > 0)) return null;
    const perLitre = bath.chargePassed / AMPERE_HOUR / litres;
    const { value, unit } = retireAfter.silverNitrate;
    return perLitre >= value ? { used: { value: perLitre, unit }, limit: { value, unit } } : null;
  },
} as const satisfies RefusalRule;
