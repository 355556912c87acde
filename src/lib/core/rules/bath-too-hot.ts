import { limits } from '../facts/limits.ts';
import { celsiusOf } from '../units/quantity.ts';
import type { RefusalRule } from './rule.ts';

/** A bath that already stands where a run must be watched: what the current adds would take it to the stop. */
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
