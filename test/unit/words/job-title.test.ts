import { expect, test } from 'vitest';
import { titleAgain, titleApart } from '../../../src/lib/words/en/job-title.ts';

const at = Date.UTC(2026, 10, 3, 12);

test('a copy is called after the first and its own day, whatever day that had', () => {
  const once = titleAgain('Fern', at);
  expect(once).toMatch(/^Fern, .*2026$/);
  for (const day of ['3 Nov 2026', 'Nov 3, 2026', 'Nov 3, 2026 (2)', '2026-11-03'])
    expect(titleAgain(`Fern, ${day}`, at)).toBe(once);
  expect(titleAgain('Ring, size 7, 3 Nov 2026', at)).toMatch(/^Ring, size 7, .*2026$/);
});

test('no two jobs are called alike', () => {
  const taken = new Set(['My piece, 3 Nov 2026', 'My piece, 3 Nov 2026 (2)']);
  expect(titleApart('My piece, 3 Nov 2026', taken)).toBe('My piece, 3 Nov 2026 (3)');
  expect(titleApart('Fern', taken)).toBe('Fern');
  // a copy of the third begins again from the name
  expect(titleAgain('My piece, 3 Nov 2026 (3)', at)).toBe(titleAgain('My piece', at));
});
