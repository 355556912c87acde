import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('entranceExam', '80 cm² × 0.005 mm of silver at 3 A, 125.1 s (0.2 %)', () => {
  const layer = layerMass(si<'length'>(5e-6), 10500, si<'area'>(80e-4));
  near(chargeToDissolve(layer, equivalentWeight({ Ag: 100 }, { Ag: 1 })) / 3, 125.1, 2e-3);
});
