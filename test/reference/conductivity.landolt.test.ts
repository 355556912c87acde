import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { check, near } from './check.ts';

/** %/K at 18 to 26 °C, referred to 25 °C as printed; ours refer to 20 °C. */
const rows = [
  ['NaNO3', [1.91, 1.87, 1.91]],
  ['KNO3', [1.82, 1.77, 1.71]],
  ['NaCl', [1.88, 1.88, 2.0]],
  ['Na2SO4', [2.06, 2.13, 2.17]],
] as const;

for (const [id, printed] of rows) {
  check('landolt', `row ${id}: ${printed.join(', ')} %/K at 25 °C, mean referred to 20 °C (0.5 %)`, () => {
    const at20 = printed.map((slope) => slope / (1 - 0.05 * slope));
    near(bathSalts[id].conductivitySlope.value, at20.reduce((a, b) => a + b) / at20.length, 5e-3);
  });
}
