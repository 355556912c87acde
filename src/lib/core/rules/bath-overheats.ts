import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/** In one run without a pause, the bath would pass the temperature at which every run is stopped. */
export const bathOverheats = {
  id: 'bath-overheats',
  kind: 'watch',
  step: 'settings',
  signal: 'WARNING',
  sources: ['tradePractice', 'bathCooling'],
  applies: ({ figures }) => {
    const { bath_temperature_end: end, heating_rate: rate } = figures;
    const hot = end && rate && end.value >= limits.stopTemperature.value;
    return hot ? { rate, stop: { value: limits.stopTemperature.value, unit: 'degC' } } : null;
  },
} as const satisfies WarningRule;
