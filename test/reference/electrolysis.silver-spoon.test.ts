import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('silverSpoon', '0.5 A for 18 min, 0.604 g (printed with M = 108, F = 96500: 0.2 %)', () => {
  const silver = equivalentWeight({ Ag: 100 }, { Ag: 1 });
  near(dissolvedMass(si<'charge'>(0.5 * 18 * 60), silver) * 1e3, 0.604, 2e-3);
});
