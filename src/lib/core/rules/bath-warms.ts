import { hasIn } from '../cell/setup.ts';
import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/** The bath may reach the temperature at which resist lifts. */
export const bathWarms = {
  id: 'bath-warms',
  kind: 'watch',
  step: 'etch',
  signal: 'CAUTION',
  sources: ['tradePractice', 'bathCooling'],
  applies: (situation) => {
    const { bath_temperature_end: end } = situation.figures;
    const warm =
      hasIn(situation, 'thermometer') &&
      end &&
      end.high >= limits.warnTemperature.value &&
      end.value < limits.stopTemperature.value;
    return warm
      ? {
          end,
          warn: { value: limits.warnTemperature.value, unit: 'degC' },
          stop: { value: limits.stopTemperature.value, unit: 'degC' },
        }
      : null;
  },
} as const satisfies WarningRule;
