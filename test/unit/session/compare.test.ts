import { expect, test } from 'vitest';
import { sideOf } from '../../../src/lib/session/compare.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { differenceText, doneRows } from '../../../src/lib/words/en/compare.ts';
import { figureOf, pendant, planOf } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const plan = planOf(pendant());
const run = (from: number, to: number) => ({
  startedAt: T0 + from * MINUTE,
  stoppedAt: T0 + to * MINUTE,
  offAt: T0 + to * MINUTE,
});
const read = (minutes: number, amps: number) => ({
  at: T0 + minutes * MINUTE,
  amps,
  volts: null,
  celsius: null,
  note: '',
});

test('a job that never ran is held by its plan', () => {
  const side = sideOf(aJob('a', { draft: { title: 'One' } }), plan);
  expect(side).toMatchObject({ title: 'One', hasRun: false, gotUm: null });
  expect(side.minutes).toBe(figureOf(plan, 'run_time').value);
  expect(side.curve.at(-1)).toEqual({ minutes: side.minutes, amps: figureOf(plan, 'current').value });
});

test('a job that ran is held by its readings, its breaks left out, and what was measured', () => {
  const record = aJob('b', {
    draft: { title: 'Two' },
    planAtStart: plan,
    snapshot: { context: { runs: [run(0, 10), run(30, 40)] } },
    readings: [read(0, 0.2), read(10, 0.4), read(30, 0.4), read(40, 0.4)],
    result: { depthUm: 90, massBeforeG: null, massAfterG: null, note: '' },
    updatedAt: T0 + 60 * MINUTE,
  });
  const side = sideOf(record, plan);
  expect(side.hasRun).toBe(true);
  expect(side.minutes).toBeCloseTo(20, 9);
  // 10 min rising from 0.2 to 0.4 A, 10 min at 0.4 A
  expect(side.chargeAh).toBeCloseTo((10 * 0.3 + 10 * 0.4) / 60, 9);
  expect(side.curve[0]).toEqual({ minutes: 0, amps: 0.2 });
  expect(side.curve.at(-1)?.minutes).toBeCloseTo(20, 9);
  const said = differenceText(
    sideOf(aJob('a', { draft: { title: 'One' } }), plan),
    side,
    2,
    defaultReadingUnits,
  ).replaceAll('\u00a0', ' ');
  expect(said).toMatch(
    /^2 answers differ: “Two” ran 20 min at 0\.35 A, against .* min at .* A, and measured 90 μm deep, against 100 μm planned\.$/,
  );
  expect(
    doneRows(side, side, defaultReadingUnits).map(([, before]) => before.replaceAll('\u00a0', ' ')),
  ).toEqual(['20 min', '0.35 A', '0.117 A·h', '90 μm']);
});
