/** Steps for the plus and minus of a number field, and limits rounded so that they stay allowed. */
import { plain } from './format.ts';

/**
 * The number one step further on, never below 0, without binary rounding errors.
 * @param typed NaN when the field holds no number; counts as 0
 * @param by may be negative
 */
export const stepped = (typed: number, by: number): number =>
  Number(Math.max(0, (Number.isFinite(typed) ? typed : 0) + by).toPrecision(9));

/** The size of one unit in the second digit of a number above 0: 1 for 23, 0.01 for 0.35. */
export const secondDigit = (value: number): number => 10 ** (Math.floor(Math.log10(value)) - 1);

/** A limit to four digits, rounded up or down so that the number shown is itself allowed. */
export function inward(value: number, up: boolean): string {
  if (value === 0) return '0';
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 3);
  return plain((up ? Math.ceil(value / step - 1e-9) : Math.floor(value / step + 1e-9)) * step);
}
