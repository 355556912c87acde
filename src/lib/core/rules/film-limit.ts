import { limits } from '../facts/limits.ts';
import { hasKnobs } from '../facts/supplies.ts';
import type { WarningRule } from './rule.ts';

/**
 * Near the highest current that the film at the metal can carry, the bite becomes patchy and its depth
 * unpredictable.
 */
export const filmLimit = {
  id: 'film-limit',
  kind: 'watch',
  step: 'settings',
  signal: 'NOTICE',
  sources: ['wagner1949', 'budgetEstimate'],
  applies: ({ figures, supply }) => {
    const { current_density: density, limiting_current_density: limit } = figures;
    if (!density || !limit || density.value < limits.filmWarning.value * limit.value) return null;
    return { density, limit, way: hasKnobs(supply.kind) ? 'film-knobs' : 'film-fixed' };
  },
} as const satisfies WarningRule;
