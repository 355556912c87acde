/** The one reader of typed numbers. */

/**
 * A number as people type it: a point or a comma, spaces ignored, a printed minus.
 * @returns null for what is blank or no number
 */
export function numberIn(typed: string): number | null {
  const text = typed.replace(/\s/g, '').replace(',', '.').replace('−', '-');
  const number = Number(text);
  return text !== '' && Number.isFinite(number) ? number : null;
}

/** The same, where it lies from `least` to `most`; null elsewhere. */
export function numberWithin(typed: string, least: number, most: number): number | null {
  const number = numberIn(typed);
  return number !== null && number >= least && number <= most ? number : null;
}

/** The same, where it is whole. */
export function wholeWithin(typed: string, least: number, most: number): number | null {
  const number = numberWithin(typed, least, most);
  return Number.isInteger(number) ? number : null;
}

/** A number as it may stand in a field: without what binary fractions leave behind. */
export const plainNumber = (value: number): string => String(Number(value.toPrecision(9)));
