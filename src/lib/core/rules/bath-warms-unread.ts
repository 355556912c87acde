import { hasIn } from '../cell/setup.ts';
import { limits } from '../facts/limits.ts';
import type { WarningRule } from './rule.ts';

/** The bath may reach the temperature at which resist lifts, and nothing there can tell its degrees. */
export const bathWarmsUnread = {
  id: 'bath-warms-unread',
  kind: 'watch',
  step: 'etch',
  signal: 'CAUTION',
  sources: ['tradePractice', 'bathCooling'],
  applies: (situation) => {
    const { bath_temperature_end: end } = situation.figures;
    const warm =
      !hasIn(situation, 'thermometer') &&
      end &&
      end.high >= limits.warnTemperature.value &&
      end.value < limits.stopTemperature.value;
    return warm ? { end } : null;
  },
} as const satisfies WarningRule;
