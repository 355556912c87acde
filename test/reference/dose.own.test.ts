import { expect } from 'vitest';
import { dissolvedMass } from '../../src/lib/core/chemistry/faraday.ts';
import { carbonateDose, silverDose } from '../../src/lib/core/chemistry/dose.ts';
import { atomicWeights } from '../../src/lib/core/facts/elements.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { freeChloride } from '../../src/lib/core/facts/treatment.ts';
import { awayFor } from '../../src/lib/core/plan/away.ts';
import { AMPERE_HOUR } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { check, near } from './check.ts';
import { overSilverChloride, silverInChloride, silverMgPerLitre } from './oracles/precipitation.ts';

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
  const left = overSilverChloride(silverInChloride, freeChloride.wanted.value);
  near(silverMgPerLitre(left), 0.0755, 1e-2);
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

// what a charge leaves in half a litre when nothing plates out: grams, and mg/L
const inHalfLitre = (ampHours: number, equivalentWeight: number): readonly [number, number] => {
  const grams = 1e3 * dissolvedMass(si<'charge'>(ampHours * AMPERE_HOUR), equivalentWeight);
  const [held] = awayFor(
    {
      salt: 'NaNO3',
      group: 'unknown',
      strength: 60,
      volumeMl: 500,
      heldMg: { Cu: 1e3 * grams },
      perLitre: 0,
    },
    { use: 'home', mayTreat: false },
  ).held;
  return [grams, held?.mgPerLitre ?? NaN];
};
check('wasteTable', 'copper, 2 A·h into 0.5 L: 2.371 g, 4742 mg/L (0.1 %)', () => {
  const [grams, mgPerLitre] = inHalfLitre(2, atomicWeights.Cu.value / 2);
  near(grams, 2.371, 1e-3);
  near(mgPerLitre, 4742, 1e-3);
});
check('wasteTable', 'silver, 1 A·h into 0.5 L: 4.025 g, 8049 mg/L (0.1 %)', () => {
  const [grams, mgPerLitre] = inHalfLitre(1, atomicWeights.Ag.value);
  near(grams, 4.025, 1e-3);
  near(mgPerLitre, 8049, 1e-3);
});
