import { expect, test } from 'vitest';
import { jobsCsv, readingsCsv } from '../../../src/lib/notebook/csv.ts';
import { aJob } from './records-for-test.ts';

const at = Date.UTC(2026, 10, 26, 9, 30);
const job = aJob('a', {
  draft: { title: 'Cuff, "wide"\nsecond', 'piece.metal': 'C11000', 'bath.salt': 'NaCl' },
  createdAt: at,
  updatedAt: at,
  readings: [{ at, amps: 0.42, volts: null, celsius: 21, note: '=HYPERLINK("x")' }],
  result: {
    depthUm: 90,
    depthBy: 'tab',
    massBeforeG: 10.5,
    massAfterG: 10.1,
    seen: { edge: 'crisp', sludge: 'none' },
    note: '-3 at the rim',
  },
  photos: [{ id: 'p', shows: 'finished', at }],
});

test('a line for each job, commas, quotes and line ends kept', () => {
  const [head, ...lines] = jobsCsv([job]).split('\r\n');
  expect(head?.split(',')).toContain('depth um');
  expect(lines.join('\r\n')).toBe(
    `a,"Cuff, ""wide""\nsecond",2026-11-26T09:30:00.000Z,2026-11-26T09:30:00.000Z,C11000,NaCl,,,90,10.5,10.1,tab,,crisp,,,none,1,1,'-3 at the rim\r\n`,
  );
});
test('a line for each reading, and nothing that a spreadsheet would reckon', () => {
  expect(readingsCsv([job]).split('\r\n')[1]).toBe(
    `a,"Cuff, ""wide""\nsecond",2026-11-26T09:30:00.000Z,0.42,,21,"'=HYPERLINK(""x"")"`,
  );
});
test('a depth typed in inches stands in its column’s unit', () => {
  const depthOf = (draft: Readonly<Record<string, string>>): string | undefined => {
    const [head, line] = jobsCsv([aJob('b', { draft })]).split('\r\n');
    return line?.split(',')[head?.split(',').indexOf('wanted mm') ?? -1];
  };
  expect(depthOf({ 'piece.depth': '0.004', 'piece.depth.unit': 'in' })).toBe('0.1016');
  expect(depthOf({ 'piece.depth': '0.1', 'piece.depth.unit': 'mm' })).toBe('0.1');
  expect(depthOf({ 'piece.depth': '0.1' })).toBe('0.1');
});
