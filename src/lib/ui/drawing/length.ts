import type { Piece } from '$lib/core/cell/setup.ts';
import { defaultReadingUnits, lengthUnits } from '$lib/core/job/reading-units.ts';
import type { ReadingUnits } from '$lib/core/job/reading-units.ts';
import { si } from '$lib/core/units/quantity.ts';

/** The maker's unit, from the text that a field holds. */
export const lengthUnit = (typed: string): ReadingUnits['length'] =>
  lengthUnits.find((unit) => unit === typed) ?? defaultReadingUnits.length;

/**
 * Width and height as measured with a ruler, m. A disc is planned as a square of equal area; this turns it
 * back.
 */
export function outlineOf({ shape, width, height }: Pick<Piece, 'shape' | 'width' | 'height'>) {
  if (shape !== 'disc') return { width, height };
  const across = si<'length'>((width * 2) / Math.sqrt(Math.PI));
  return { width: across, height: across };
}
