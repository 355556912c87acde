import { numberIn } from '../core/units/typed-number.ts';

/** Number of decimals in a typed number. */
const decimals = (value: number): number => (String(value).split('.')[1] ?? '').length;

/**
 * Smallest step of the scale used for a piece, g: as the maker said, or smaller if the typed digits show it.
 * @param scale as typed
 */
export function scaleStep(scale: string | undefined, masses: readonly (number | null)[]): number {
  const said = numberIn(scale ?? '') ?? 0;
  const shown = Math.min(1, ...masses.map((mass) => (mass === null ? 1 : 10 ** -decimals(mass))));
  return said > 0 ? Math.min(said, shown) : shown;
}
