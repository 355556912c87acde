import { airOpening, hydrogenAir, molarVolume } from '../../src/lib/core/chemistry/gas.ts';
import { FARADAY } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

check('en62485', 'q = 0.42e-3 m³ of hydrogen per A·h at 0 °C (0.5 %: last digit)', () => {
  near((3600 / (2 * FARADAY)) * molarVolume(273.15), 0.42e-3, 5e-3);
});
// one cell whose gassing current is the current; 24 cells of 500 A·h at 6 A for 100 A·h gas as 24·30 A
check('en62485', 'traction: 24 cells, 6 A in 100 A·h, 500 A·h: 36 m³/h and 1008 cm²', () => {
  const air = 24 * hydrogenAir(si<'current'>(6 * 5));
  near(air * 3600, 36, 1e-9);
  near(airOpening(air) * 1e4, 1008, 1e-9);
});
