import { dissolve } from '../../src/lib/core/chemistry/solution.ts';
import { waterDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';

/**
 * A second handbook table, of dilute solutions at 25 °C: 0.1 equivalents a litre, S·cm²/equivalent. It
 * tests the 20 °C table, its interpolation and its temperature slope together. The 20 °C table itself
 * lies 3 to 5 % low for potassium nitrate, so 5 % for all.
 */
const rows = [
  ['NaCl', 106.69, 58.44],
  ['KNO3', 120.34, 101.102],
  ['Na2SO4', 89.94, 142.036 / 2],
  ['CuSO4', 50.55, 159.602 / 2],
] as const;

for (const [id, perEquivalent, equivalent] of rows) {
  check('crcEquivalent', `row ${id}, 0.1 N: ${perEquivalent} S·cm²/equivalent (5 %)`, () => {
    const grams = 0.1 * equivalent;
    // a litre of so thin a solution holds a litre of water to 0.5 %
    const bath = dissolve(
      { facts: bathSalts[id], hydrate: null },
      si<'massConcentration'>((grams / 1000) * waterDensity(25)),
      si<'temperature'>(298.15),
    );
    near(bath.conductivity * 10, 0.1 * perEquivalent, 5e-2);
  });
}
