import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('verma', 'silver on both sides of 200 cm², 0.10 mm, 15 A: 42 min (half a last digit)', () => {
  const layer = layerMass(si<'length'>(1e-4), 10500, si<'area'>(2 * 200e-4));
  near(chargeToDissolve(layer, equivalentWeight({ Ag: 100 }, { Ag: 1 })) / 15 / 60, 42, 1.2e-2);
});
