import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

// the book prints its answer as a picture: statement read, numbers worked out independently
const steel = equivalentWeight(
  { Cr: 18, Ni: 10, Mo: 3, Mn: 2, Fe: 67 },
  { Cr: 3, Ni: 2, Mo: 3, Mn: 2, Fe: 2 },
);
const DAY = 86400;

check('kfupm', 'AISI 316, equivalent weight 25.35 (0.1 %)', () => {
  near(steel, 25.35, 1e-3);
});
check('kfupm', 'the same at 1 µA/cm², 10.39 µm a year at 7.98 g/cm³ (0.2 %)', () => {
  const mass = dissolvedMass(si<'charge'>(0.01 * 365.25 * DAY), steel);
  near(meanDepth(mass, 7980, si<'area'>(1)) * 1e6, 10.39, 2e-3);
});
check('kfupm', 'the same, 2.27 mg/dm² a day (0.2 %)', () => {
  near(dissolvedMass(si<'charge'>(0.01 * DAY), steel) * 1e4, 2.27, 2e-3);
});
