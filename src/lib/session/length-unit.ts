import { converted } from '../core/units/convert.ts';
import { numberIn } from '../core/units/typed-number.ts';
import type { Draft, FieldId } from './draft.ts';

/** Lengths asked on later screens: they must stay as long when the unit changes. */
const elsewhere: readonly FieldId[] = [
  'cathode.gap',
  'cathode.width',
  'cathode.height',
  'tub.length',
  'tub.width',
  'tub.diameter',
  'tub.fill',
];

/**
 * Changes what lengths are typed in. Numbers on the same screen stay as typed, since the maker is just
 * saying what they were; the others are converted, to a tenth of a millimetre.
 * @returns the answers that change
 */
export function lengthsIn(to: 'mm' | 'in', draft: Draft): Partial<Draft> {
  if (draft['unit.length'] === to) return {};
  const lengths = elsewhere.flatMap((field) => {
    const typed = numberIn(draft[field]);
    if (typed === null) return [];
    const length =
      to === 'in' ? converted(typed, 'mm', 'in').toFixed(2) : converted(typed, 'in', 'mm').toFixed(1);
    return [[field, String(Number(length))]];
  });
  const isThicknessBlank = draft['piece.thickness'].trim() === '';
  return {
    ...(Object.fromEntries(lengths) as Partial<Draft>),
    ...(isThicknessBlank && ['mm', 'in'].includes(draft['piece.thickness.unit'])
      ? { 'piece.thickness.unit': to }
      : {}),
    'unit.length': to,
  };
}
