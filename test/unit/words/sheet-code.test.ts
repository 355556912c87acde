import { expect, test } from 'vitest';
import { sheetFaults } from '../../../src/lib/words/en/from-sheet.ts';
import { home } from '../../../src/lib/words/en/home.ts';
import { sheetTexts } from '../../../src/lib/words/en/papers.ts';

test('wherever a code is typed, printed or not found, it is said where its letters work', () => {
  expect(home.fromSheetHint).toContain('work in the notebook that printed them');
  expect(sheetTexts.fromThis).toContain('of the device that printed it');
  expect(sheetFaults['not-here']).toContain('not in this notebook');
  // and what works anywhere else
  for (const text of [home.fromSheetHint, sheetFaults['not-here']]) expect(text).toMatch(/QR code/);
});
