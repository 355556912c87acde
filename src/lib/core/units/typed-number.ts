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

/** A number as it may stand in a field: without what binary fractions leave behind. */
export const plainNumber = (value: number): string => String(Number(value.toPrecision(9)));
