import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { chargeToDissolve } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('chang', '"spoon", minutes for 0.884 g of silver at 18.5 mA, 712 min (0.1 %)', () => {
  const silver = equivalentWeight({ Ag: 100 }, { Ag: 1 });
  near(chargeToDissolve(si<'mass'>(0.884e-3), silver) / 18.5e-3 / 60, 712, 1e-3);
});
