import { limits } from '../facts/limits.ts';
import type { RefusalRule } from './rule.ts';

/** From 10 V up the resist lifts, the bath heats up and gas forms instead of the bite. */
export const tenVolts = {
  id: 'ten-volts',
  kind: 'block',
  step: 'settings',
  sources: ['tradePractice'],
  applies: ({ supply }) => {
    const volts = supply.control === 'volts' ? supply.volts : supply.maxVolts;
    return volts < limits.refusedVolts.value ? null : { volts: { value: volts, unit: 'V' } };
  },
} as const satisfies RefusalRule;
