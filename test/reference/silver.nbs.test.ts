import { expect } from 'vitest';
import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

const milligrams = dissolvedMass(si<'charge'>(1), equivalentWeight({ Ag: 100 }, { Ag: 1 })) * 1e6;

check('nbsSilver', 'Craig et al. 1960, 1.117972 ± 0.000019 mg/C, within its error', () => {
  expect(Math.abs(milligrams - 1.117972)).toBeLessThanOrEqual(0.000019);
});
// its own ±1 ppm rests on an older ampere and silver weight: 10 ppm
check('nbsSilver', 'Bower & Davis 1980, 1.1179648 mg/C (10 ppm)', () => {
  near(milligrams, 1.1179648, 1e-5);
});
