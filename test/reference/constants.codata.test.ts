import { FARADAY, GAS_CONSTANT } from '../../src/lib/core/units/constants.ts';
import { check, near } from './check.ts';

check('codata', 'Faraday constant from e and N_A, both exact (1e-10)', () => {
  near(FARADAY, 1.602176634e-19 * 6.02214076e23, 1e-10);
});
check('codata', 'gas constant from k and N_A, both exact (1e-9)', () => {
  near(GAS_CONSTANT, 1.380649e-23 * 6.02214076e23, 1e-9);
});
check('codata', 'RT/F at 298.15 K: 25.6926 mV (1e-5)', () => {
  near((GAS_CONSTANT * 298.15) / FARADAY, 0.0256926, 1e-5);
});
