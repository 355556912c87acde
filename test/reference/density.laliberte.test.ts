import { solutionDensity, waterDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { check, near } from './check.ts';

check('laliberte', 'test vector, sodium chloride 0.0037838838 by mass at 0 °C: 1002.62501201 kg/m³', () => {
  near(solutionDensity(bathSalts.NaCl.apparentDensity.c, 0.0037838838, 0), 1002.62501201, 1e-8);
});
check('laliberte', 'test vector, water at 25 °C: 997.0448954 kg/m³', () => {
  near(waterDensity(25), 997.0448954179155, 1e-10);
});
check('laliberte', 'test vector, water at 50 °C: 988.0362916 kg/m³', () => {
  near(waterDensity(50), 988.0362916114763, 1e-10);
});
