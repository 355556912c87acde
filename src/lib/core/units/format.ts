/** Numbers for error messages and fields, the same in every language. The words room writes all others. */

/**
 * A value rounded to a number of significant digits, without exponent: 1234 becomes 1230 at three digits. The
 * minus sign is U+2212.
 */
export function significant(value: number, digits = 3): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(digits));
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  return rounded.toFixed(Math.min(20, Math.max(0, decimals))).replace('-', '−');
}

/** The same without trailing zeros, for numbers that were typed or are exact: 20, not 20.0. */
export const plain = (value: number, digits = 4): string =>
  significant(value, digits)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
