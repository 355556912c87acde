import { expect, test } from 'vitest';
import { finderIn } from '../../../src/lib/session/find-jobs.ts';
import type { JobLine } from '../../../src/lib/session/jobs.ts';

const line = (id: string, change: Partial<JobLine> = {}): JobLine => ({
  id,
  title: 'Fern pendant',
  metal: 'sterling-925',
  salt: 'NaNO3',
  depth: '0.1 mm',
  note: 'edges clean',
  step: 'sheet',
  touchedAt: Date.UTC(2026, 2, 3, 12),
  powered: false,
  ...change,
});
const names: Readonly<Record<string, string>> = {
  'sterling-925': 'Sterling silver',
  C11000: 'Copper',
  NaNO3: 'Sodium nitrate',
  NaCl: 'Table salt',
};
const jobs = [
  line('a'),
  line('b', { title: 'Cuff', metal: 'C11000', salt: 'NaCl', depth: '0.3 mm', note: '' }),
  line('c', { title: 'Test strip', touchedAt: Date.UTC(2025, 10, 20, 12) }),
];
const named = (id: string): string => names[id] ?? id;
const ids = (typed: string) => finderIn(jobs, named)(typed).map(({ id }) => id);

test.each([
  ['', ['a', 'b', 'c']],
  ['silver', ['a', 'c']],
  ['table salt', ['b']],
  ['NaCl', ['b']],
  ['0.3 mm', ['b']],
  ['march 2026', ['a', 'b']],
  ['2025-11-20', ['c']],
  ['CLEAN fern', ['a']],
  ['fern copper', []],
] as const)('"%s" finds %j', (typed, wanted) => {
  expect(ids(typed)).toEqual(wanted);
});

test('one of five thousand jobs is found', () => {
  const many = Array.from({ length: 5000 }, (_, n) => line(String(n), { title: `Piece ${String(n)}` }));
  expect(finderIn(many, named)('4321').map(({ id }) => id)).toEqual(['4321']);
});
