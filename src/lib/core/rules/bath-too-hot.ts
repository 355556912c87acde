import { limits } from '../facts/bench-facts.ts';
import { celsiusOf } from '../units/quantity.ts';
import type { RefusalRule } from './rule.ts';

/** A bath that already stands where every run is stopped. */
export const bathTooHot = {
  id: 'bath-too-hot',
  kind: 'block',
  step: 'electrolyte',
  sources: ['tradePractice'],
  applies: ({ bath }) => {
    const celsius = celsiusOf(bath.temperature);
    const stop = limits.stopTemperature.value;
    return celsius < stop
      ? null
      : { found: { value: celsius, unit: 'degC' }, stop: { value: stop, unit: 'degC' } };
  },
} as const satisfies RefusalRule;
