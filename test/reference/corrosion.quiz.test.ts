import { equivalentWeight } from '../../src/lib/core/chemistry/alloy.ts';
import { dissolvedMass, meanDepth } from '../../src/lib/core/chemistry/faraday.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('corrosionQuiz', 'iron, D = 7.86, 1 µA/cm²: 0.46 mils a year (half a last digit)', () => {
  const mass = dissolvedMass(si<'charge'>(0.01 * 365.25 * 86400), equivalentWeight({ Fe: 100 }, { Fe: 2 }));
  near(meanDepth(mass, 7860, si<'area'>(1)) / 25.4e-6, 0.46, 1.1e-2);
});
