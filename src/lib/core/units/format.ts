/** Numbers as faults and fields write them, whatever the language; what people read is written by `words`. */

/**
 * A value to so many significant digits, without exponent; 1234 becomes 1230 at three digits.
 * A minus is written as one.
 */
export function significant(value: number, digits = 3): string {
  if (value === 0) return '0';
  const rounded = Number(value.toPrecision(digits));
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  return rounded.toFixed(Math.min(20, Math.max(0, decimals))).replace('-', '−');
}

/** The same without trailing zeros, for what is typed or exact: 20, not 20.0. */
export const plain = (value: number, digits = 4): string =>
  significant(value, digits)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
