import { molarVolume } from '../../src/lib/core/chemistry/gas.ts';
import { FARADAY } from '../../src/lib/core/units/constants.ts';
import { check, near } from './check.ts';

check('en62485', 'q = 0.42e-3 m³ of hydrogen per A·h at 0 °C (0.5 %: last digit)', () => {
  near((3600 / (2 * FARADAY)) * molarVolume(273.15), 0.42e-3, 5e-3);
});
