import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

const silver = equivalentWeight({ Ag: 100 }, { Ag: 1 });
const mass = dissolvedMass(si<'charge'>(2 * 8700), silver, 0.82);

check('masterton', '"baby’s spoon", 2.00 A for 8700 s at 82 %, 15.94 g (0.1 %)', () => {
  near(mass * 1e3, 15.94, 1e-3);
});
check('masterton', 'the same on 6.25 cm², 0.243 cm (half a last digit)', () => {
  near(meanDepth(mass, 10500, si<'area'>(6.25e-4)) * 100, 0.243, 2e-3);
});
