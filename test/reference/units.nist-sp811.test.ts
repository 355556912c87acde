import { toSi } from '../../src/lib/core/units/convert.ts';
import { check, near } from './check.ts';

check('nistSp811', '1 ft³ is 2.831685e-2 m³ (1e-6)', () => {
  near(toSi(1, 'ft3', 'volume'), 2.831685e-2, 1e-6);
});
check('nistSp811', '1 US fluid ounce is 29.57353 mL (1e-6)', () => {
  near(toSi(1, 'usfloz', 'volume') * 1e6, 29.57353, 1e-6);
});
check('nistSp811', '1 imperial fluid ounce is 28.41306 mL (1e-6)', () => {
  near(toSi(1, 'ukfloz', 'volume') * 1e6, 28.41306, 1e-6);
});
check('nistSp811', '1 oz per US gallon is 7.489152 g/L (1e-6)', () => {
  near(toSi(1, 'oz/gal', 'massConcentration'), 7.489152, 1e-6);
});
check('nistSp811', '68 °F is 20 °C', () => {
  near(toSi(68, 'degF', 'temperature'), 293.15, 1e-12);
});
check('nistSp811', '1 in² is 6.4516 cm²', () => {
  near(toSi(1, 'in2', 'area') * 1e4, 6.4516, 1e-12);
});
