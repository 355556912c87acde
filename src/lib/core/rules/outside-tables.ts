import { coveredStrengths, coveredTemperatures, solubility } from '../chemistry/solution.ts';
import { findBoughtSalt } from '../facts/salts.ts';
import { celsiusOf } from '../units/quantity.ts';
import type { RefusalRule } from './rule.ts';

/** Strength or temperature outside what the handbook tables cover: refused, never extrapolated. */
export const outsideTables = {
  id: 'outside-tables',
  kind: 'block',
  step: 'electrolyte',
  sources: ['crcConductivity', 'crcSolubility'],
  applies: ({ bath }) => {
    const salt = findBoughtSalt(bath.salt);
    if (salt === null) return null;
    const [coldest, warmest] = coveredTemperatures(salt);
    const celsius = celsiusOf(bath.temperature);
    if (celsius < coldest || celsius > warmest) {
      return {
        found: { value: celsius, unit: 'degC' },
        low: { value: coldest, unit: 'degC' },
        high: { value: warmest, unit: 'degC' },
      };
    }
    const [weakest, strongest] = coveredStrengths(salt, bath.temperature);
    const dissolves = bath.strength <= solubility(salt, bath.temperature);
    if (!dissolves || (bath.strength >= weakest && bath.strength <= strongest)) return null;
    return {
      found: { value: bath.strength, unit: 'g/L' },
      low: { value: weakest, unit: 'g/L' },
      high: { value: Math.min(strongest, solubility(salt, bath.temperature)), unit: 'g/L' },
    };
  },
} as const satisfies RefusalRule;
