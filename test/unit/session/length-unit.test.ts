import { expect, test } from 'vitest';
import { draftFrom } from '../../../src/lib/session/draft.ts';
import { lengthsIn } from '../../../src/lib/session/length-unit.ts';

const typed = draftFrom({
  'piece.width': '30',
  'piece.thickness': '1',
  'cathode.gap': '30',
  'tub.length': '120,5',
  'tub.width': 'wide',
});

test('a change of unit keeps what is asked elsewhere as long as it was', () => {
  const inches = lengthsIn('in', typed);
  expect(inches).toEqual({ 'cathode.gap': '1.18', 'tub.length': '4.74', 'unit.length': 'in' });
  expect(lengthsIn('mm', { ...typed, ...inches })).toEqual({
    'cathode.gap': '30',
    'tub.length': '120.4',
    'unit.length': 'mm',
  });
});

test('a thickness not yet typed follows, and the same unit changes nothing', () => {
  expect(lengthsIn('in', draftFrom({}))['piece.thickness.unit']).toBe('in');
  expect(lengthsIn('in', draftFrom({ 'piece.thickness.unit': 'gauge-BS' }))).not.toHaveProperty([
    'piece.thickness.unit',
  ]);
  expect(lengthsIn('mm', typed)).toEqual({});
});
