import { plain, significant } from '../../core/units/format.ts';
import { withUnit } from './units.ts';

/** What was got, once the mask is off. */
export const resultTexts = {
  title: 'What did you get?',
  lead: 'All below may stay empty; what you note makes the next piece better.',
  depth: 'Depth, measured',
  depthAt: (point: number): string => `Depth, point ${String(point)}`,
  another: 'Measure another point',
  /** @param mean mm */
  mean: (points: number, mean: number): string =>
    `Mean of ${String(points)} points: ${withUnit(significant(mean, 3), 'mm')}.`,
  /** @param sheet mm */
  tooDeep: (sheet: number): string => `More than the sheet: ${withUnit(plain(sheet), 'mm')} is all there is.`,
  before: 'Weight before',
  after: 'Weight after',
  gained: 'It weighs no less than before. Was one of the two with the mask on?',
  coarse: 'Your scale is coarse for this piece.',
  note: 'Note',
  rebite: 'The mask is off and it is not deep enough',
  back: 'You go back to the resist step, and check everything before power again.',
  again: 'Mask it again and bite',
} as const;
