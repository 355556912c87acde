import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { thicknessRows } from '../fixtures/thickness-tables.ts';
import { check, near } from './check.ts';

for (const { metal, electrons, density, micrometres } of thicknessRows) {
  check('misumi', `${metal}, n = ${electrons}: ${micrometres} µm per A·min/dm² (0.5 %)`, () => {
    const mass = dissolvedMass(si<'charge'>(60), equivalentWeight({ [metal]: 100 }, { [metal]: electrons }));
    near(meanDepth(mass, density * 1e3, si<'area'>(1e-2)) * 1e6, micrometres, 5e-3);
  });
}
