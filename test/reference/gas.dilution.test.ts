import { freshAir } from '../../src/lib/core/chemistry/gas.ts';
import { check, near } from './check.ts';

check('abulencia', 'example 20.2: 2.15 L/min of toluene vapour at 80 ppm, K = 5: 134 375 L/min', () => {
  near(freshAir(2.15, 80e-6, 5), 134_375, 1e-9);
});
