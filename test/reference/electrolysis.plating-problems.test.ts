import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve, layerMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

/** Minutes for 25 µm of copper at 3.0 A/dm² and 75 %. */
function minutes(electrons: number): number {
  const layer = layerMass(si<'length'>(25e-6), 8900, si<'area'>(1e-2));
  return chargeToDissolve(layer, equivalentWeight({ Cu: 100 }, { Cu: electrons }), 0.75) / 3 / 60;
}

check(
  'platingProblems',
  '25 µm of copper at 3.0 A/dm², 75 %, with the Cu(II) equivalent: 50 min (0.5 %)',
  () => {
    near(minutes(2), 50, 5e-3);
  },
);
check('platingProblems', 'the same as Cu(I): half of it, 25.1 min', () => {
  near(minutes(1), 25.1, 5e-3);
});
