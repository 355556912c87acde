import { expect } from 'vitest';
import { carbonateDose, silverDose } from '../../src/lib/core/chemistry/dose.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { check, near } from './check.ts';

const NaCl = bathSalts.NaCl.molarMass.value;

check('wasteTable', '4 g of silver in 0.5 L: 2.459 g of table salt (0.1 %)', () => {
  near(silverDose(4, 0.5).grams, 2.459, 1e-3);
});
check('wasteTable', 'of it 2.167 g for the silver, 0.292 g over (0.2 %)', () => {
  near(silverDose(4, 0).grams, 2.167, 1e-3);
  near(silverDose(0, 0.5).grams, 0.292, 2e-3);
});
check('wasteTable', '5.315 g of silver chloride; 0.0755 mg/L stay (1 %)', () => {
  near(silverDose(4, 0.5).sludge, 5.315, 1e-3);
  near(silverDose(4, 0.5).left ?? NaN, 0.0755, 1e-2);
});
check('wasteTable', 'never more than 6 g/L of free table salt (3 %: last digit)', () => {
  near((silverDose(4, 1).most - silverDose(4, 0).grams) / 1, 5.84, 3e-3);
  expect(silverDose(4, 1).most - silverDose(4, 0).grams).toBeLessThan(6);
  // 5 mg/L are crossed again at six times that
  expect(37 / (0.1 * NaCl)).toBeGreaterThan(6);
});
for (const [element, ash, sludge] of [
  ['Cu', 1.668, 1.535],
  ['Zn', 1.621, 1.52],
] as const) {
  check('wasteTable', `1 g of ${element}: ${ash} g of soda ash, ${sludge} g of dry hydroxide (0.1 %)`, () => {
    near(carbonateDose({ [element]: 1 }, 0.5).grams, ash, 1e-3);
    near(carbonateDose({ [element]: 1 }, 0.5).sludge, sludge, 1e-3);
  });
}
check('wasteTable', '2 A·h of copper in 0.5 L, 2.371 g: 3.955 g of soda ash (0.1 %)', () => {
  near(carbonateDose({ Cu: 2.371 }, 0.5).grams, 3.955, 1e-3);
});
check('wasteTable', 'brass is the sum of its metals', () => {
  const { grams } = carbonateDose({ Cu: 0.7, Zn: 0.3 }, 1);
  near(grams, 0.7 * 1.668 + 0.3 * 1.621, 1e-3);
});
