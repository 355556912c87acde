import { gasVolume } from '../../src/lib/core/chemistry/gas.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('ieee484', '0.127 mL/s of hydrogen per ampere at 25 °C, 101.3 kPa (0.4 %: last digit)', () => {
  near(gasVolume(si<'charge'>(1)) * 1e6, 0.127, 4e-3);
});
