import { numberIn } from '../core/units/typed-number.ts';

/** Digits after the point of a number as typed. */
const decimals = (value: number): number => (String(value).split('.')[1] ?? '').length;

/**
 * Smallest step of the scale that a piece was weighed on, g: the maker's own word, or finer where the digits tell.
 * @param scale as typed
 */
export function scaleStep(scale: string | undefined, masses: readonly (number | null)[]): number {
  const said = numberIn(scale ?? '') ?? 0;
  const shown = Math.min(1, ...masses.map((mass) => (mass === null ? 1 : 10 ** -decimals(mass))));
  return said > 0 ? Math.min(said, shown) : shown;
}
