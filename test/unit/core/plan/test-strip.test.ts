import { expect, test } from 'vitest';
import {
  basisOf,
  bittenShares,
  layOut,
  oddWindows,
  stripOf,
  stripRate,
  stripShares,
  stripSpeeds,
  windowArea,
  windowRates,
} from '../../../../src/lib/core/plan/test-strip.ts';
import { figureOf, pendant, planOf } from '../../../fixtures/jobs.ts';

const plan = planOf(pendant());
const planned =
  figureOf(plan, 'depth').working.inputs.find(({ id }) => id === 'currentEfficiency')?.value ?? NaN;
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

test('windows fill the scrap at hand, apart from each other, under the clip; too small a scrap is refused', () => {
  const layout = layOut(60, 30);
  if (!layout) throw new Error('no layout');
  expect([layout.width, layout.height]).toEqual([10, 14]);
  layout.windows.forEach(({ x, y }, n) => {
    expect(x).toBe(4 + 14 * n);
    expect(y).toBe(12);
    expect(x + layout.width).toBeLessThanOrEqual(60 - 4);
    expect(y + layout.height).toBeLessThanOrEqual(30 - 4);
  });
  expect(layOut(32, 19)).not.toBeNull();
  for (const [width, height] of [
    [31, 19],
    [32, 18],
    [0, 0],
    [NaN, 30],
  ] as const)
    expect(layOut(width, height)).toBeNull();
});

test('a window that stands apart is named, three or more being measured; a gauge’s own doubt names none', () => {
  const depths = [50, 80, 110, 140];
  const odd = (change: Partial<Record<number, number | null>>) => {
    const measured = depths.map((depth, n) => (n in change ? (change[n] ?? null) : depth));
    return oddWindows(windowRates(basis, measured), measured);
  };
  expect(odd({})).toEqual([]);
  expect(odd({ 2: 200 })).toEqual([2]);
  expect(odd({ 0: 60, 1: 85 })).toEqual([]);
  expect(odd({ 0: null, 1: null, 3: 300 })).toEqual([]);
});

test('a window bitten longer than planned tells its rate by the time it really had', () => {
  const [early, late] = [windowRates(basis, [60], [0.5]), windowRates(basis, [60], [0.6])];
  expect((early[0] ?? 0) / (late[0] ?? 1)).toBeCloseTo(1.2, 9);
});

test('windows have the share of the planned time that they really had', () => {
  const windows = [
    { minutes: 10, share: 0.5 },
    { minutes: 16, share: 0.8 },
  ];
  expect(bittenShares(windows, [12])).toEqual([0.6, 0.8]);
});

test('a strip deepens as the plan’s depth over its minutes, and at the rate its windows told', () => {
  // 100 um in 20 min
  const speeds = stripSpeeds(
    { wanted: 100, rate: 0.8 },
    { minutes: 10, share: 0.5 },
    { value: 90, low: 72, high: 108 },
    1,
  );
  expect(speeds.low).toBeCloseTo(4, 12);
  expect(speeds.high).toBeCloseTo(6, 12);
  expect(speeds.fit).toBeCloseTo(6.25, 12);
});

test('a window of 8 by 14 mm is 1.12 cm²', () => {
  expect(windowArea({ width: 8, height: 14 })).toBe(1.12);
});
