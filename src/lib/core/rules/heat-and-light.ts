import { resistFacts } from '../facts/resists.ts';
import type { WarningRule } from './rule.ts';

/** Ironing on toner burns hands; the light that exposes film harms the eyes. */
export const heatAndLight = {
  id: 'heat-and-light',
  kind: 'watch',
  step: 'resist',
  signal: 'CAUTION',
  sources: ['memory'],
  applies: ({ resist }) => {
    const { applied } = resistFacts[resist];
    return applied === 'cold' ? null : { how: `resist-${applied}` };
  },
} as const satisfies WarningRule;
