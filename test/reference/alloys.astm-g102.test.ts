import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { alloyRows } from '../fixtures/astm-g102.ts';
import { check, near } from './check.ts';

for (const { alloy, massPercent, valences, printed } of alloyRows) {
  const states = Object.entries(valences).map(([element, n]) => `${element}(${n})`);
  check('astmG102', `${alloy}, ${states.join(' ')}: ${printed} (0.5 %)`, () => {
    near(equivalentWeight(massPercent, valences), printed, 5e-3);
  });
}

check('astmG102', 'K1 = 3.27e-3 mm·g/(µA·cm·year) (0.1 %)', () => {
  const mass = dissolvedMass(si<'charge'>(1e-6 * 365.25 * 86400), 1);
  near(meanDepth(mass, 1000, si<'area'>(1e-4)) * 1e3, 3.27e-3, 1e-3);
});
check('astmG102', 'K2 = 8.954e-3 g·cm²/(µA·m²·d) (0.05 %)', () => {
  near(dissolvedMass(si<'charge'>(1e-6 * 1e4 * 86400), 1) * 1e3, 8.954e-3, 5e-4);
});
