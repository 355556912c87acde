import type { SaltData } from '../facts/salts/salt-facts.ts';
import { readTable } from './curve.ts';
import { solutionDensity } from './water-density.laliberte2009.ts';

/**
 * Density of a solution of one salt: the handbook's curve at 20 °C, times the ratio that Laliberté's model
 * gives between the two temperatures. A salt without a model keeps the value at 20 °C.
 * @param massPercent anhydrous salt, %
 * @returns kg/m³
 * @throws OutsideTable beyond the curve's ends
 */
export function densityAt(
  { density, apparentDensity }: Pick<SaltData, 'density' | 'apparentDensity'>,
  massPercent: number,
  celsius: number,
): number {
  const at20 = 1000 * readTable(density, massPercent);
  if (apparentDensity === null) return at20;
  const { c } = apparentDensity;
  const fraction = massPercent / 100;
  return (at20 * solutionDensity(c, fraction, celsius)) / solutionDensity(c, fraction, 20);
}
