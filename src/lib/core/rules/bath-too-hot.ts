import { limits } from '../facts/limits.ts';
import { celsiusOf } from '../units/quantity.ts';
import type { RefusalRule } from './rule.ts';

/** The bath is already so warm that a run must be watched; the current would heat it up to the stop. */
export const bathTooHot = {
  id: 'bath-too-hot',
  kind: 'block',
  step: 'electrolyte',
  sources: ['tradePractice'],
  applies: ({ bath }) => {
    const celsius = celsiusOf(bath.temperature);
    const most = limits.warnTemperature.value;
    return celsius < most
      ? null
      : {
          found: { value: celsius, unit: 'degC' },
          most: { value: most, unit: 'degC' },
          stop: { value: limits.stopTemperature.value, unit: 'degC' },
        };
  },
} as const satisfies RefusalRule;
