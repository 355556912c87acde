import { describe, expect, test } from 'vitest';
import { bathHazards } from '../../../src/lib/print/bath-hazards.ts';
import { everyPlan, planOf } from './printed.ts';

describe('the hazards of a used bath', () => {
  test('of silver in nitrate are the worse of both, without the irritant sign beside corrosion', () => {
    expect(bathHazards(planOf('seed-head-pendant'))).toEqual({
      family: 'silver',
      signal: 'Danger',
      statements: [
        'Causes severe skin burns and eye damage',
        'Very toxic to aquatic life with long lasting effects',
        'May intensify fire; oxidiser',
      ],
      pictograms: ['GHS03', 'GHS05', 'GHS09'],
    });
  });

  test('of copper in table salt come from the copper', () => {
    expect(bathHazards(planOf('wave-band-cuff'))?.pictograms).toEqual(['GHS05', 'GHS07', 'GHS09']);
  });

  test('of brass in nitrate need all four signs: harmful if swallowed is said by no other', () => {
    expect(bathHazards(planOf('evening-class-tokens'))?.pictograms).toEqual([
      'GHS03',
      'GHS05',
      'GHS07',
      'GHS09',
    ]);
  });

  test('always have a signal word and a statement', () => {
    for (const plan of everyPlan()) {
      const hazards = bathHazards(plan);
      expect(hazards?.signal).toBe('Danger');
      expect(hazards?.statements.length).toBeGreaterThan(1);
    }
  });
});
