/**
 * Densities of water and of a one-salt solution after Laliberté, J. Chem. Eng. Data 54 (2009) 1725; the
 * equations for ρ_w and ρ_app are as found in open code. Temperatures in °C.
 */

/** @returns kg/m³ */
export const waterDensity = (celsius: number): number =>
  (((((-2.8054253e-10 * celsius + 1.0556302e-7) * celsius - 4.6170461e-5) * celsius - 0.0079870401) *
    celsius +
    16.945176) *
    celsius +
    999.83952) /
  (1 + 0.01687985 * celsius);

/**
 * @param c the solute's five coefficients
 * @param massFraction anhydrous solute over solution, 0 to 1
 * @returns kg/m³
 */
export function solutionDensity(
  c: readonly [number, number, number, number, number],
  massFraction: number,
  celsius: number,
): number {
  if (massFraction === 0) return waterDensity(celsius);
  const apparent =
    ((c[0] * massFraction + c[1]) * Math.exp(1e-6 * (celsius + c[4]) ** 2)) /
    (massFraction + c[2] + c[3] * celsius);
  return 1 / ((1 - massFraction) / waterDensity(celsius) + massFraction / apparent);
}
