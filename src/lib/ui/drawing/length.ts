import type { Piece } from '$lib/core/cell/setup.ts';
import { fromSi } from '$lib/core/units/convert.ts';
import { plain } from '$words/locale.ts';
import { si } from '$lib/core/units/quantity.ts';
import { withUnit } from '$words/units.ts';

/** The units a drawing is labelled in. */
export type LengthUnit = 'mm' | 'in';

/** The maker's unit, from a field that holds text. */
export const lengthUnit = (typed: string): LengthUnit => (typed === 'in' ? 'in' : 'mm');

/** A length as a label: three digits are enough to hold a ruler against. */
export const lengthText = (metres: number, unit: LengthUnit): string =>
  withUnit(plain(fromSi(si<'length'>(metres), unit), 3), unit);

/** Width and height as a ruler finds them, m: a disc is planned as the square of equal area, and is round again here. */
export function outlineOf({ shape, width, height }: Pick<Piece, 'shape' | 'width' | 'height'>) {
  if (shape !== 'disc') return { width, height };
  const across = si<'length'>((width * 2) / Math.sqrt(Math.PI));
  return { width: across, height: across };
}
