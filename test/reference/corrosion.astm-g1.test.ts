import { meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('astmG1', 'coupon, 87.6·W/(D·A·t): 1 mg from 1 cm² in 1 h at 1 g/cm³ is 87.6 mm a year', () => {
  const depth = meanDepth(si<'mass'>(1e-6), 1000, si<'area'>(1e-4));
  near(depth * 1e3 * 8760, 87.6, 1e-9);
});
