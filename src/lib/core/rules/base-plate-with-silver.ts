import { isBitable, metals } from '../facts/metals.ts';
import { hasNitrate, bathHoldsSilver } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/**
 * A plate less noble than silver dissolves in exchange for dissolved silver. Loose silver then bridges the
 * gap, and copper turns nitrate into ammonia.
 */
export const basePlateWithSilver = {
  id: 'base-plate-with-silver',
  kind: 'block',
  step: 'electrodes',
  sources: ['standardPotentials', 'tradePractice'],
  applies: (situation) => {
    const { metal } = situation.cathode;
    // every other family is less noble than silver, steel most of all
    const base = isBitable(metal) && metals[metal].family !== 'silver';
    return bathHoldsSilver(situation) && hasNitrate(situation) && base ? { plate: metal } : null;
  },
} as const satisfies RefusalRule;
