/** Reads typed numbers. Every field uses it, so that all accept the same spellings. */

/**
 * Reads a number as people type it: with a point or a comma, with spaces, with a printed minus sign.
 * @returns null when the text is blank or not a number
 */
export function numberIn(typed: string): number | null {
  const text = typed.replace(/\s/g, '').replace(',', '.').replace('−', '-');
  const number = Number(text);
  return text !== '' && Number.isFinite(number) ? number : null;
}

/** As `numberIn`, but null outside `least` to `most`. */
export function numberWithin(typed: string, least: number, most: number): number | null {
  const number = numberIn(typed);
  return number !== null && number >= least && number <= most ? number : null;
}

/** As `numberWithin`, but null for a number that is not whole. */
export function wholeWithin(typed: string, least: number, most: number): number | null {
  const number = numberWithin(typed, least, most);
  return Number.isInteger(number) ? number : null;
}

/** A number as a field shows it, rounded to nine digits to hide binary rounding errors. */
export const plainNumber = (value: number): string => String(Number(value.toPrecision(9)));
