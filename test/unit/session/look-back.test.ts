import { expect, test } from 'vitest';
import { lessonsIn } from '../../../src/lib/session/look-back.ts';
import { summaryOf } from '../../../src/lib/session/job-summary.ts';
import { figureOf, pendant, planOf } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const plan = planOf(pendant(), { 'supply.showsAmps': true });
const charge = figureOf(plan, 'charge').value;
const depth = figureOf(plan, 'depth').value;

const done = (id: string, share: number, day: number) => {
  const at = T0 + day * 24 * 60 * MINUTE;
  return aJob(id, {
    draft: { title: `Job ${id}` },
    planAtStart: plan,
    snapshot: {
      context: { runs: [{ startedAt: at, stoppedAt: at + 20 * MINUTE, offAt: at + 20 * MINUTE }] },
    },
    readings: [{ at, amps: 3 * charge, volts: null, celsius: null, note: '' }],
    result: { depthUm: depth * share, massBeforeG: null, massAfterG: null, note: '' },
    updatedAt: at + 30 * MINUTE,
  });
};

test('own results stand beside what the tables expect, oldest first', () => {
  const [lesson, ...others] = lessonsIn([done('b', 0.8, 2), done('a', 0.85, 1), aJob('c')].map(summaryOf));
  expect(others).toEqual([]);
  expect(lesson?.dots.map(({ id }) => id)).toEqual(['a', 'b']);
  expect(lesson?.learnt.jobs).toBe(2);
  expect(lesson?.table.low).toBeLessThan(lesson?.table.median ?? 0);
  expect(lesson?.learnt.median).toBeLessThan(lesson?.table.median ?? 0);
});

test('one that stands far from the others is marked, not dropped', () => {
  const jobs = [0.9, 0.91, 0.89, 0.9, 0.92, 0.88].map((share, n) => done(`j${String(n)}`, share, n));
  const [lesson] = lessonsIn([...jobs, done('odd', 0.25, 9)].map(summaryOf));
  expect(lesson?.dots.filter(({ isDoubted }) => isDoubted).map(({ id }) => id)).toEqual(['odd']);
  expect(lesson?.learnt.jobs).toBe(7);
});

test('an empty notebook has taught nothing', () => {
  expect(lessonsIn([])).toEqual([]);
});
