import { amount, cuff, figureOf, pendant, planOf } from '../fixtures/jobs.ts';
import { check, near } from './check.ts';

// through a whole plan: the salt of the bath alone decides
const copperIn = (salt: string, strength: number) =>
  figureOf(
    planOf(cuff(), { 'bath.salt': salt, 'bath.strength': amount(strength, 'g/L') }),
    'equivalent_weight',
  ).value;

for (const [salt, strength, electrons] of [
  ['NaCl', 50, 1],
  ['NaNO3', 60, 2],
  ['KNO3', 60, 2],
  ['CuSO4.5H2O', 100, 2],
  ['Na2SO4', 60, 2],
] as const) {
  check('kinoshita', `abstract: copper gives ${electrons} per atom, planned in ${salt}`, () => {
    near(copperIn(salt, strength), 63.546 / electrons, 1e-4);
  });
}

check('kinoshita', 'abstract: the copper in brass gives one in chloride, planned: 49.52', () => {
  const brass = planOf(cuff(), { 'piece.metal': 'brass', 'cathode.metal': 'brass' });
  near(figureOf(brass, 'equivalent_weight').value, 49.52, 5e-4);
});
check('kinoshita', 'abstract: the copper in sterling gives two in nitrate, planned: 91.44', () => {
  near(figureOf(planOf(pendant()), 'equivalent_weight').value, 91.44, 5e-4);
});
