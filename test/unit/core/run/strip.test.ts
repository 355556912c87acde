import { expect, test } from 'vitest';
import { bittenMinutes, stripStage } from '../../../../src/lib/core/run/strip.ts';

const MINUTE = 60_000;
const windows = [10, 16, 22, 28].map((minutes, n) => ({
  share: 0.5 + 0.3 * n,
  minutes,
  amps: 0.4 * (4 - n),
  expected: 0,
}));
/** Runs of so many minutes, an hour apart. */
const runs = (...spans: readonly number[]) =>
  spans.map((minutes, n) => ({
    startedAt: n * 60 * MINUTE,
    stoppedAt: (n * 60 + minutes) * MINUTE,
    offAt: (n * 60 + minutes) * MINUTE,
  }));

test('a strip goes from window to window by the time its current was on, whatever lies between', () => {
  expect(stripStage(windows, [], 0)).toMatchObject({ window: 0, left: 10 * MINUTE, amps: 1.6 });
  expect(stripStage(windows, runs(10), 1e9)).toMatchObject({ window: 1, left: 6 * MINUTE });
  expect(stripStage(windows, runs(10, 6, 6), 1e9)).toMatchObject({ window: 3, amps: 0.4 });
  expect(stripStage(windows, runs(10, 6, 6, 6), 1e9).window).toBeNull();
  // stopped early: the same window again, for what is left of it
  expect(stripStage(windows, runs(7), 1e9)).toMatchObject({ window: 0, left: 3 * MINUTE });
  // a few seconds are no reason to power it once more
  expect(stripStage(windows, runs(9.9), 1e9).window).toBe(1);
  // one still running counts to now
  const open = [{ startedAt: 0, stoppedAt: null, offAt: null }];
  expect(stripStage(windows, open, 4 * MINUTE)).toMatchObject({ window: 0, left: 6 * MINUTE });
});

test('each window had the time until the pause in which it was stopped out', () => {
  expect(bittenMinutes(windows, runs(10.5, 6, 6, 7))).toEqual([10.5, 16.5, 22.5, 29.5]);
  expect(bittenMinutes(windows, runs(7, 3.2))).toEqual([10.2, null, null, null]);
  // two came due in one run
  expect(bittenMinutes(windows, runs(17))).toEqual([17, 17, null, null]);
});
