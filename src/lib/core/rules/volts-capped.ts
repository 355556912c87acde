import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/** The chosen volts are above the plan's ceiling but below the refused voltage: the plan uses its ceiling. */
export const voltsCapped = {
  id: 'volts-capped',
  kind: 'watch',
  step: 'settings',
  signal: 'NOTICE',
  sources: ['tradePractice'],
  applies: ({ supply }) => {
    const volts = supply.control === 'volts' ? supply.volts : supply.maxVolts;
    return volts > limits.planVolts.value
      ? { volts: { value: volts, unit: 'V' }, cap: { value: limits.planVolts.value, unit: 'V' } }
      : null;
  },
} as const satisfies WarningRule;
