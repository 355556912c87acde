import { fromSi } from '../../core/units/convert.ts';
import { plain } from '../../core/units/format.ts';
import { si } from '../../core/units/quantity.ts';
import { withUnit } from './units.ts';

/** The units a drawing is labelled in. */
export type LengthUnit = 'mm' | 'in';

/** A length as a label: three digits are enough to hold a ruler against. @param metres m */
export const lengthText = (metres: number, unit: LengthUnit): string =>
  withUnit(plain(fromSi(si<'length'>(metres), unit), 3), unit);

/** No finer than a calliper reads. @param metres m */
export const calliperText = (metres: number): string => lengthText(Math.round(metres * 1e5) / 1e5, 'mm');
