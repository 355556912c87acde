import type { ReadingUnits } from '../../core/job/reading-units.ts';
import { significant } from './locale.ts';
import { amountText, readIn, withUnit } from './units.ts';

/** Texts about the result, once the mask is off. */
export const resultTexts = {
  title: 'What did you get?',
  lead: 'All below may stay empty; what you note makes the next piece better.',
  depth: 'Depth, measured',
  depthAt: (point: number): string => `Depth, point ${String(point)}`,
  another: 'Measure another point',
  /** @param mean depth, mm */
  mean: (points: number, mean: number, units: ReadingUnits): string => {
    const { value, unit, finest } = readIn(mean, 'mm', units);
    return `Mean of ${String(points)} points: ${withUnit(significant(value, 3, finest), unit)}.`;
  },
  /** @param sheet thickness, mm */
  tooDeep: (sheet: number, units: ReadingUnits): string =>
    `More than the sheet: ${amountText(sheet, 'mm', units)} is all there is.`,
  before: 'Weight before',
  after: 'Weight after',
  gained: 'It weighs no less than before. Was one of the two with the mask on?',
  coarse: 'Your scale is coarse for this piece.',
  note: 'Note',
  otherwise: 'Weighed or measured it some other way?',
  rebite: 'The mask is off and it is not deep enough',
  back: 'You go back to the resist step, and check everything before power again.',
  again: 'Mask it again and bite',
} as const;
