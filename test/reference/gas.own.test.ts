import { gasVolume, molarVolume, timeToFlammable } from '../../src/lib/core/chemistry/gas.ts';
import { AMPERE_HOUR, FARADAY } from '../../src/lib/core/units/constants.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { amount, cuff, figureOf, pendant, planOf } from '../fixtures/jobs.ts';
import { check, near } from './check.ts';

const oneAh = si<'charge'>(AMPERE_HOUR);

check('gasTable', 'hydrogen, 456.42 mL/A·h at 25 °C', () => {
  near(gasVolume(oneAh) * 1e6, 456.42, 2e-5);
});
check('gasTable', 'hydrogen, 418.15 mL/A·h at 0 °C', () => {
  near((AMPERE_HOUR / (2 * FARADAY)) * molarVolume(273.15) * 1e6, 418.15, 2e-5);
});
check('gasTable', 'oxygen, four electrons, 228.2 mL/A·h at 25 °C', () => {
  near(gasVolume(oneAh, 4) * 1e6, 228.2, 3e-4);
});
check('gasTable', 'chlorine, 1.3228 g/A·h', () => {
  near((gasVolume(oneAh) / molarVolume()) * 70.906, 1.3228, 5e-5);
});
check('gasTable', '2 A make 913 mL an hour', () => {
  near(gasVolume(si<'charge'>(2 * 3600)) * 1e6, 913, 1e-3);
});
check('gasTable', '4 % under a closed 1 L lid at 2 A after 2.6 min (2 %: last digit)', () => {
  near(timeToFlammable(si<'current'>(2), si<'volume'>(1e-3), 0.04) / 60, 2.6, 2e-2);
});
check('gasTable', 'closed 20 m³, 2 A for 30 min, all as chlorine, 23 ppm, planned', () => {
  // a run is stopped by its depth: the same charge, 1 A·h, wherever it ends
  const plan = planOf(cuff(), { 'place.room': amount(20, 'm3') });
  const { value } = figureOf(plan, 'chlorine_worst_case');
  near(value / figureOf(plan, 'charge').value, 23, 1e-2);
});
check('gasTable', 'hydrogen of a plan is 456.42 mL for each A·h of it', () => {
  const plan = planOf(pendant());
  near(figureOf(plan, 'hydrogen').value / figureOf(plan, 'charge').value, 456.42, 2e-5);
});
