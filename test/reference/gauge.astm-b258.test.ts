import { toSi } from '../../src/lib/core/units/convert.ts';
import { brownSharpe } from '../../src/lib/core/units/gauge.ts';
import { check, near } from './check.ts';

// half a last digit of the printed millimetres
for (const [gauge, millimetres] of [
  [10, 2.588],
  [14, 1.628],
  [18, 1.0237],
  [20, 0.8118],
  [22, 0.6438],
  [24, 0.5106],
  [36, 0.127],
  [0, 8.251],
] as const) {
  check('astmB258', `${gauge} gauge: ${millimetres} mm (0.02 %)`, () => {
    near(brownSharpe(gauge) * 1e3, millimetres, 2e-4);
    near(toSi(gauge, 'gauge-BS', 'length') * 1e3, millimetres, 2e-4);
  });
}
