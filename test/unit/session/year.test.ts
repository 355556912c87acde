import { expect, test } from 'vitest';
import { summaryOf } from '../../../src/lib/session/job-summary.ts';
import { yearsIn } from '../../../src/lib/session/year.ts';
import { nearText, onText, yearText } from '../../../src/lib/words/en/year.ts';
import { finishedJob } from '../../fixtures/finished-job.ts';
import { aJob } from '../notebook/records-for-test.ts';

const result = (depthUm: number | null) => ({ depthUm, massBeforeG: null, massAfterG: null, note: '' });
const jobs = [
  finishedJob('a', 'A', new Date(2026, 0, 5).getTime(), { result: result(95) }),
  finishedJob('b', 'B', new Date(2026, 0, 20).getTime(), { result: result(55) }),
  finishedJob('c', 'C', new Date(2026, 11, 31).getTime(), { result: null }),
  finishedJob('d', 'D', new Date(2025, 5, 1).getTime(), { result: result(110) }),
  aJob('never bitten'),
];

test('a year adds up its own jobs, by month and by metal, the latest year first', () => {
  const [year, before, ...others] = yearsIn(jobs.map(summaryOf));
  expect(others).toEqual([]);
  expect([year?.year, before?.year]).toEqual([2026, 2025]);
  expect(year?.whole).toMatchObject({ jobs: 3, pieces: 3, measured: 2, near: 1 });
  expect(year?.months.map((month) => month.jobs)).toEqual([2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]);
  expect(year?.metals).toMatchObject([{ family: 'silver', sums: { jobs: 3 } }]);
  const charge = year?.dots.reduce((sum, { chargeAh }) => sum + chargeAh, 0);
  expect(year?.whole.chargeAh).toBeCloseTo(charge ?? NaN, 12);
  expect(year?.dots.map(({ share }) => share)).toEqual([0.95, 0.55, null]);
});

test('it is told in words', () => {
  const [year] = yearsIn(jobs.map(summaryOf));
  if (!year) throw new Error('no year');
  expect(yearText(year.year, year.whole)).toBe(
    '2026: 3 jobs, 3 pieces. Of 2 measured, 1 came within a fifth of the wanted depth.',
  );
  expect([nearText(0, 0), nearText(3, 4)]).toEqual(['not measured', '3/4']);
  expect([onText(45), onText(600)].map((text) => text.replace(/\s/, ' '))).toEqual(['45 min', '10 h']);
  expect(yearsIn([])).toEqual([]);
});
