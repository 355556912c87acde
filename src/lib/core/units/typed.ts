/** Numbers as a maker types and turns them: steps of a field, and limits that stay inside when rounded. */
import { plain } from './format.ts';

/**
 * A typed number one step on, never below 0, without what binary fractions leave.
 * @param typed NaN for no number, which counts as 0
 * @param by either way
 */
export const stepped = (typed: number, by: number): number =>
  Number(Math.max(0, (Number.isFinite(typed) ? typed : 0) + by).toPrecision(9));

/** One unit in the second digit of a number above 0: 1 for 23, 0.01 for 0.35. */
export const secondDigit = (value: number): number => 10 ** (Math.floor(Math.log10(value)) - 1);

/** Four digits, rounded up or down so that the value named as a limit is itself allowed. */
export function inward(value: number, up: boolean): string {
  if (value === 0) return '0';
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 3);
  return plain((up ? Math.ceil(value / step - 1e-9) : Math.floor(value / step + 1e-9)) * step);
}
