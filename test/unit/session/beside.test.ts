import { expect, test } from 'vitest';
import { besides, changesFrom, earlierOf } from '../../../src/lib/session/beside.ts';
import { amount, pendant, planOf } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const plan = planOf(pendant());
const result = { depthUm: 60, massBeforeG: null, massAfterG: null, note: '' };

test.each([
  ['no snapshot', null],
  ['a snapshot of another shape', { value: 'elsewhere' }],
])('a job that came with %s is still compared with', (_what, snapshot) => {
  const earlier = earlierOf(aJob('a', { planAtStart: plan, snapshot, result }));
  // without its runs nothing is known of the time, so nothing is advised
  expect(earlier).toMatchObject({ plan, next: null });
});

test('a job that never ran is not', () => {
  expect(earlierOf(aJob('a'))).toBeNull();
  expect(earlierOf(null)).toBeNull();
});

test('only what differs is listed, and old stands beside new', () => {
  const wider = planOf(pendant(), { 'cathode.gap': amount(40, 'mm') });
  expect(changesFrom(plan, plan)).toEqual([]);
  expect(changesFrom(plan, wider)).toEqual([{ path: 'cathode.gap', before: '0.03', after: '0.04' }]);
  const volts = besides(plan, wider).find(({ id }) => id === 'current');
  expect([volts?.before, volts?.now]).toEqual([plan.figures.current, wider.figures.current]);
});
