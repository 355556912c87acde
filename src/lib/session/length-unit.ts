import { advice } from '../core/facts/advice.ts';
import { detailBounds } from '../core/job/typed-bounds.ts';
import { unitsTyped } from '../core/job/reading-units.ts';
import type { ReadingUnits } from '../core/job/reading-units.ts';
import { converted } from '../core/units/convert.ts';
import { numberIn, plainNumber } from '../core/units/typed-number.ts';
import { readingUnitsIn } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';

/** Lengths asked on later screens. They must keep their size when the unit changes. */
const elsewhere: readonly FieldId[] = [
  'cathode.gap',
  'cathode.width',
  'cathode.height',
  'tub.length',
  'tub.width',
  'tub.diameter',
  'tub.fill',
];

/** What short lengths are typed in beside a job. */
export const shortUnit = ({ length }: Pick<ReadingUnits, 'length'>): 'mm' | 'in' =>
  length === 'in' ? 'in' : 'mm';

/** A short length as typed, mm; null when it is not a number. */
export function mmTyped(text: string, units: ReadingUnits): number | null {
  const typed = numberIn(text);
  return typed === null ? null : converted(typed, shortUnit(units), 'mm');
}

/** A short length as it would be typed, with four digits in inches. */
export const mmText = (mm: number, units: ReadingUnits): string =>
  shortUnit(units) === 'mm' ? plainNumber(mm) : String(lengthTyped(mm, 'in'));

/** The smallest detail to keep, mm; null when it is out of bounds. */
export function detailTyped(text: string, units: ReadingUnits): number | null {
  const mm = mmTyped(text, units);
  return mm !== null && mm >= detailBounds.least && mm <= detailBounds.most ? mm : null;
}

/** @param mm a length @param unit the one that the depth is typed in */
export const inDepthUnit = (mm: number, unit: string): number =>
  unit === 'in' ? converted(mm, 'mm', 'in') : mm;

const FOUR = 4;
const lengthTyped = (mm: number, unit: string): number => Number(inDepthUnit(mm, unit).toPrecision(FOUR));

/** A known depth in the unit that this draft uses. */
export const depthTyped = (mm: number, draft: Draft): string =>
  String(lengthTyped(mm, draft['piece.depth.unit']));

const areaUnit = (draft: Draft) => (draft['piece.openArea.unit'] === 'in2' ? 'in2' : 'cm2');

/** The bare area as typed, cm²; null when it is not a number. */
export function areaTypedCm2(draft: Draft): number | null {
  const typed = numberIn(draft['piece.openArea']);
  return typed === null ? null : converted(typed, areaUnit(draft), 'cm2');
}

/** A bare area in the unit that this draft uses. */
export const areaTyped = (cm2: number, draft: Draft): string =>
  String(Number(converted(cm2, 'cm2', areaUnit(draft)).toPrecision(FOUR)));

/** Depth and bare area in the other unit, to four digits. */
function finer(to: 'mm' | 'in', draft: Draft): Partial<Draft> {
  const units = unitsTyped({ length: to });
  const [depth, area] = [numberIn(draft['piece.depth']), areaTypedCm2(draft)];
  const isInch = draft['piece.depth.unit'] === 'in';
  const told = depth === null ? null : converted(depth, isInch ? 'in' : 'mm', to);
  return {
    ...(told === null ? {} : { 'piece.depth': String(Number(told.toPrecision(FOUR))) }),
    ...(area === null ? {} : { 'piece.openArea': areaTyped(area, { ...draft, ...units }) }),
    ...units,
  };
}

/** To a tenth of a millimetre, or as near. */
const digits = { mm: 1, cm: 2, in: 2 } as const;

/**
 * Changes the unit in which lengths are typed. Numbers on the same screen stay as typed, because the maker is
 * only saying what they meant. All others are converted, to a tenth of a millimetre; depth and bare area to
 * four digits.
 * @returns the answers that change
 */
export function lengthsIn(to: ReadingUnits['length'], draft: Draft): Partial<Draft> {
  const { length: from } = readingUnitsIn(draft);
  if (from === to) return {};
  const short = shortUnit({ length: to });
  const lengths = elsewhere.flatMap((field) => {
    const typed = numberIn(draft[field]);
    if (typed === null) return [];
    return [[field, String(Number(converted(typed, from, to).toFixed(digits[to])))]];
  });
  const isThicknessBlank = draft['piece.thickness'].trim() === '';
  return {
    ...(Object.fromEntries(lengths) as Partial<Draft>),
    ...finer(short, draft),
    ...(isThicknessBlank && ['mm', 'in'].includes(draft['piece.thickness.unit'])
      ? { 'piece.thickness.unit': short }
      : {}),
    'unit.length': to,
  };
}

/** Whether the sides, typed in mm, are those of a piece smaller than any jewel: most likely they are cm. */
export function meansCm(draft: Draft, sides: readonly FieldId[]): boolean {
  const typed = sides.map((side) => numberIn(draft[side]));
  return (
    readingUnitsIn(draft).length === 'mm' &&
    typed.every((side) => side !== null && side > 0) &&
    Math.max(...typed.map((side) => side ?? 0)) < advice.smallestPiece.value
  );
}
