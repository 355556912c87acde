import { gasVolume, molarVolume, partsPerMillion } from '../../src/lib/core/chemistry/gas.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('scoel', '1 ppm of chlorine is 2.95 mg/m³ at 20 °C (0.1 %)', () => {
  near((70.906 / molarVolume(293.15)) * 1e-3, 2.95, 1e-3);
});
check(
  'scoel',
  '1 A·h all as chlorine into 20 m³, by its factor 22.4 ppm (2 %: 25 °C here, 20 °C there)',
  () => {
    const gas = gasVolume(si<'charge'>(3600));
    near(partsPerMillion(gas, si<'volume'>(20)), 22.4, 2e-2);
  },
);
