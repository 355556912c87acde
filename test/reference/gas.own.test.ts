import { freshAir, gasVolume, molarVolume, timeToReach } from '../../src/lib/core/chemistry/gas.ts';
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
  near(timeToReach(si<'current'>(2), si<'volume'>(1e-3), 0.04) / 60, 2.6, 2e-2);
});
const twoAmps = gasVolume(si<'charge'>(2));
check('gasTable', 'hydrogen of 2 A below 1 %: 0.091 m³/h, badly mixed 0.456', () => {
  near(freshAir(twoAmps, 0.01, 1) * 3600, 0.091, 5e-3);
  near(freshAir(twoAmps, 0.01, 5) * 3600, 0.456, 2e-3);
});
check('gasTable', 'all of 2 A as chlorine below 0.5 ppm: 1826 m³/h; 1 % of it, badly mixed, 91 m³/h', () => {
  near(freshAir(twoAmps, 0.5e-6, 1) * 3600, 1826, 1e-3);
  near(freshAir(0.01 * twoAmps, 0.5e-6, 5) * 3600, 91, 5e-3);
});
check('gasTable', 'a plan in salt water asks for that air, and takes 1 % of the charge as likely', () => {
  const plan = planOf(cuff(), { 'place.room': amount(20, 'm3') });
  const amps = figureOf(plan, 'current').value;
  near(figureOf(plan, 'chlorine_air').value / amps, 91 / 2, 5e-3);
  near(figureOf(plan, 'chlorine_likely').value / figureOf(plan, 'chlorine_worst_case').value, 0.01, 1e-9);
  near(figureOf(plan, 'minutes_to_chlorine_limit').value * amps, (0.5e-6 * 20 * 3600) / 4.5642e-4 / 60, 1e-4);
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
