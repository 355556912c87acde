import type { WarningRule } from './rule.ts';

/**
 * An adapter or a battery has no knob for the amps. When the cell draws more than it can give, it gets hot or
 * shuts off.
 */
export const overloadsSupply = {
  id: 'overloads-supply',
  kind: 'watch',
  step: 'settings',
  signal: 'CAUTION',
  sources: ['tradePractice'],
  applies: ({ supply, figures }) => {
    const { current_asked: asked } = figures;
    if (supply.control !== 'volts' || supply.kind === 'bench' || supply.maxAmps === null) return null;
    if (!asked || asked.value <= supply.maxAmps) return null;
    return { asked, most: { value: supply.maxAmps, unit: 'A' } };
  },
} as const satisfies WarningRule;
