import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/**
 * In salt water the metal dissolves first. Chlorine forms once the metal is used up or the current collapses.
 */
export const chlorine = {
  id: 'chlorine',
  kind: 'watch',
  step: 'etch',
  signal: 'WARNING',
  sources: ['scoel76', 'niosh1', 'budgetEstimate'],
  applies: ({ figures, place }) => {
    const {
      chlorine_worst_case: worst,
      chlorine_likely: likely,
      minutes_to_chlorine_limit: minutes,
    } = figures;
    if (!worst || !likely || !minutes || place.room === null) return null;
    return {
      worst,
      likely,
      minutes,
      limit: { value: limits.chlorineShort.value, unit: 'ppm' },
      room: { value: place.room, unit: 'm3' },
    };
  },
} as const satisfies WarningRule;
