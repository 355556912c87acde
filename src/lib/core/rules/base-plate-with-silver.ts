import { isBitable, metals } from '../facts/metals.ts';
import { hasNitrate, bathHoldsSilver } from './asks.ts';
import type { RefusalRule } from './rule.ts';

/** Copper swaps places with dissolved silver: the plate dissolves, loose silver bridges the gap, and copper makes ammonia from nitrate. */
export const basePlateWithSilver = {
  id: 'base-plate-with-silver',
  kind: 'block',
  step: 'electrodes',
  sources: ['standardPotentials', 'tradePractice'],
  applies: (situation) => {
    const { metal } = situation.cathode;
    // every other family is baser than silver, steel most of all
    const base = isBitable(metal) && metals[metal].family !== 'silver';
    return bathHoldsSilver(situation) && hasNitrate(situation) && base ? { plate: metal } : null;
  },
} as const satisfies RefusalRule;
