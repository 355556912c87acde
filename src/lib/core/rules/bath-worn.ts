import { retireAfter } from '../facts/treatment.ts';
import { AMPERE_HOUR } from '../units/constants.ts';
import { bathHoldsSilver, hasNitrate } from './asks.ts';
import type { WarningRule } from './rule.ts';

/*
 * There is no published charge after which to retire a bath. 5 A·h/L for silver in nitrate (at worst 23 mmol
 * of ammonia in a litre) and 10 A·h/L otherwise are common practice without a source, and marked so.
 */

/**
 * A bath is retired by the charge it has passed, not by its look, because nitrate becomes nitrite and
 * ammonia.
 */
export const bathWorn = {
  id: 'bath-worn',
  kind: 'watch',
  step: 'electrolyte',
  signal: 'WARNING',
  sources: ['tradePractice', 'nitrateReduction'],
  applies: (situation) => {
    const { bath, figures } = situation;
    const { charge, bath_volume: volume } = figures;
    if (!volume) return null;
    const limit = bathHoldsSilver(situation) && hasNitrate(situation) ? 'silverNitrate' : 'other';
    const used = bath.chargePassed / AMPERE_HOUR + (charge?.value ?? 0);
    const perLitre = (1e3 * used) / volume.value;
    const { value, unit } = retireAfter[limit];
    return perLitre >= value ? { used: { value: perLitre, unit }, limit: { value, unit } } : null;
  },
} as const satisfies WarningRule;
