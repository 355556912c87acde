import { expect, test } from 'vitest';
import { brownSharpe, imperialStandard } from '../../../../src/lib/core/units/gauge.ts';

const wholes = Array.from({ length: 31 }, (_, gauge) => gauge);

test('both systems thin out with every number', () => {
  for (const thickness of [brownSharpe, imperialStandard]) {
    const sheets = wholes.map(thickness);
    expect(sheets.toSorted((a, b) => b - a)).toEqual(sheets);
    expect(new Set(sheets).size).toBe(sheets.length);
  }
});

test('the same number is not the same sheet', () => {
  expect(brownSharpe(20) * 1e3).toBeCloseTo(0.812, 3);
  expect(imperialStandard(20) * 1e3).toBeCloseTo(0.914, 3);
});

test('Brown & Sharpe doubles about every six numbers', () => {
  expect(brownSharpe(14) / brownSharpe(20)).toBeCloseTo(92 ** (6 / 39), 12);
});

test.each([-1, 40.001, 41])('Brown & Sharpe refuses %d', (gauge) => {
  expect(() => brownSharpe(gauge)).toThrow(RangeError);
});

test.each([-1, 0.5, 31, Number.NaN])('British standard refuses %d', (gauge) => {
  expect(() => imperialStandard(gauge)).toThrow(RangeError);
});
