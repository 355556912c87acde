import { expect, test } from 'vitest';
import {
  basisOf,
  stripOf,
  stripRate,
  stripShares,
  windowRates,
} from '../../../../src/lib/core/plan/test-strip.ts';
import { figureOf, pendant, planOf } from '../../../fixtures/jobs.ts';

const plan = planOf(pendant());
const planned = figureOf(plan, 'depth').working.inputs.find(({ id }) => id === 'yield')?.value ?? NaN;
const basis = basisOf(plan);
const { wanted } = basis;

test('windows bracket the wanted depth, as dense as on the piece, fewer amps with each that is stopped out', () => {
  const windows = stripOf(plan, 1) ?? [];
  expect(windows).toHaveLength(4);
  expect(windows[0]?.expected).toBeLessThan(wanted);
  expect(windows.at(-1)?.expected).toBeGreaterThan(wanted);
  const { settings, job, figures } = plan;
  const amps = settings?.control === 'amps' ? settings.amps : (figures.current?.value ?? NaN);
  const each = amps / ((job.piece.openArea ?? NaN) * 1e4);
  expect(windows.map((window) => window.amps / each)).toEqual(
    [4, 3, 2, 1].map((n) => expect.closeTo(n, 9) as number),
  );
  expect(stripOf(plan, 2)?.[0]?.amps).toBeCloseTo(2 * (windows[0]?.amps ?? NaN), 9);
  expect(stripOf(planOf(pendant(), { 'bath.salt': 'NaCl' }), 1)).toBeNull();
});

test('depths as expected tell the planned rate, half of them half of it', () => {
  const depths = stripShares.map((share) => share * wanted);
  expect(stripRate(windowRates(basis, depths), wanted)?.rate).toBeCloseTo(planned, 9);
  expect(
    stripRate(
      windowRates(
        basis,
        depths.map((one) => one / 2),
      ),
      wanted,
    )?.rate,
  ).toBeCloseTo(planned / 2, 9);
});

test('a strip counts as one job, surer the better its windows agree; one window alone tells nothing', () => {
  const even = stripRate([0.8, 0.8, 0.8, 0.8], wanted);
  const uneven = stripRate([0.5, 1.1, 0.7, 1], wanted);
  expect(even?.off).toBeLessThan(uneven?.off ?? 0);
  expect(stripRate([0.8, null, null, null], wanted)).toBeNull();
  expect(windowRates(basis, [null, 0, 60, null]).map((one) => one === null)).toEqual([
    true,
    true,
    false,
    true,
  ]);
});
