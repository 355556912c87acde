import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/** The bath may reach the temperature at which resist lifts. */
export const bathWarms = {
  id: 'bath-warms',
  kind: 'watch',
  step: 'etch',
  signal: 'CAUTION',
  sources: ['tradePractice', 'bathCooling'],
  applies: ({ figures }) => {
    const { bath_temperature_end: end } = figures;
    const warm = end && end.high >= limits.warnTemperature.value && end.value < limits.stopTemperature.value;
    return warm
      ? {
          end,
          warn: { value: limits.warnTemperature.value, unit: 'degC' },
          stop: { value: limits.stopTemperature.value, unit: 'degC' },
        }
      : null;
  },
} as const satisfies WarningRule;
