import { describe, expect, test } from 'vitest';
import {
  ampsNow,
  chargeSoFar,
  endToEnd,
  energised,
  isSpread,
  meanAmps,
  stretchesOf,
} from '../../../../src/lib/core/run/tally.ts';
import { fromMinutes, toMinutes } from '../../../../src/lib/core/units/time.ts';
import { T0, at, reads, run, target } from '../../../fixtures/bench-run.ts';

describe('charge so far', () => {
  test('goes by the planned amps without readings', () => {
    expect(chargeSoFar([run(0)], [], target, at(10))).toBeCloseTo(0.1, 9);
  });
  test('holds the first reading back to the start and the last one on', () => {
    // 0.3 A to minute 4, straight up to 0.9 A at minute 8, 0.9 A to minute 10
    const ampMinutes = 4 * 0.3 + 4 * 0.6 + 2 * 0.9;
    expect(chargeSoFar([run(0)], [reads(4, 0.3), reads(8, 0.9)], target, at(10))).toBeCloseTo(
      ampMinutes / 60,
      9,
    );
  });
  test('leaves out what was read without amps', () => {
    expect(chargeSoFar([run(0)], [reads(5, null, 24)], target, at(10))).toBeCloseTo(0.1, 9);
  });
  test('carries the amps of one run into the next, and counts nothing between them', () => {
    const runs = [run(0, 5), run(20)];
    expect(chargeSoFar(runs, [reads(2, 0.3)], target, at(30))).toBeCloseTo((5 * 0.3 + 10 * 0.3) / 60, 9);
    expect(energised(runs, at(30))).toBe(fromMinutes(15));
  });
  test('counts till the meter read zero, not till Stop was pressed', () => {
    expect(energised([run(0, 6, 5)], at(30))).toBe(fromMinutes(6));
    expect(energised([run(0, null, 5)], at(30))).toBe(fromMinutes(5));
  });
  test('never runs backwards when a clock was set back', () => {
    expect(energised([run(0)], at(-3))).toBe(0);
    expect(chargeSoFar([run(0)], [], target, at(-3))).toBe(0);
  });
  test('is the area under its stretches, end to end', () => {
    const pieces = stretchesOf([run(0, 10)], [reads(4, 0.3), reads(8, 0.9)], target, at(10));
    expect(pieces.map(({ from, to }) => [toMinutes(from - T0), toMinutes(to - T0)])).toEqual([
      [0, 4],
      [4, 8],
      [8, 10],
    ]);
  });
});

test('stretches set end to end leave the pauses out', () => {
  const placed = endToEnd(stretchesOf([run(0, 5), run(20, 30)], [reads(25, 0.5)], target, at(40)));
  expect(placed.map(({ begin, end }) => [toMinutes(begin), toMinutes(end)])).toEqual([
    [0, 5],
    [5, 10],
    [10, 15],
  ]);
  expect(endToEnd([])).toEqual([]);
});

describe('a count', () => {
  test('goes by the latest amps read, or by the plan’s', () => {
    expect(ampsNow([reads(1, 0.3), reads(2, null, 25)], target)).toBe(0.3);
    expect(ampsNow([], target)).toBe(0.6);
  });
  test('has a mean current', () => {
    expect(meanAmps(0.1, fromMinutes(10))).toBeCloseTo(0.6, 12);
    expect(meanAmps(0, 0)).toBe(0);
  });
  test('is shown as two from a twentieth of doubt on', () => {
    expect(isSpread(0.96, 1)).toBe(false);
    expect(isSpread(0.94, 1)).toBe(true);
  });
});
