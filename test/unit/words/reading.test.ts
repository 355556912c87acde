import { expect, test } from 'vitest';
import { gradeOf } from '../../e2e/reading.ts';

test('the measure of reading tells plain words from hard ones', () => {
  expect(gradeOf(['Put the gloves on.', 'Look at the clip and then lift the piece.'])).toBeLessThan(4);
  expect(
    gradeOf([
      'Electrochemical dissolution necessitates appropriate precautionary ventilation and individual protective equipment.',
    ]),
  ).toBeGreaterThan(15);
});
