import type { Piece } from '$lib/core/cell/setup.ts';
import { defaultReadingUnits, lengthUnits } from '$lib/core/job/reading-units.ts';
import type { ReadingUnits } from '$lib/core/job/reading-units.ts';
import { si } from '$lib/core/units/quantity.ts';

/** The maker's unit, from a field that holds text. */
export const lengthUnit = (typed: string): ReadingUnits['length'] =>
  lengthUnits.find((unit) => unit === typed) ?? defaultReadingUnits.length;

/** Width and height as a ruler finds them, m: a disc is planned as the square of equal area, and is round again here. */
export function outlineOf({ shape, width, height }: Pick<Piece, 'shape' | 'width' | 'height'>) {
  if (shape !== 'disc') return { width, height };
  const across = si<'length'>((width * 2) / Math.sqrt(Math.PI));
  return { width: across, height: across };
}
