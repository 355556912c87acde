import { describe, expect, test } from 'vitest';
import { evenSample, normalQuantile, quantile } from '../../../../src/lib/core/units/sample.ts';

describe('the normal quantile', () => {
  // tables of the standard normal distribution, to ten decimals
  test.each([
    [0.5, 0],
    [0.75, 0.6744897502],
    [0.9, 1.2815515655],
    [0.95, 1.644853627],
    [0.975, 1.9599639845],
    [0.99, 2.326347874],
    [0.999, 3.0902323062],
    [0.9999, 3.7190164855],
    [0.02425, -1.972961],
  ])('of %d is %d', (p, z) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThanOrEqual(p === 0.02425 ? 1e-6 : 1e-8);
  });
  test('is odd about one half', () => {
    for (const p of [0.001, 0.02, 0.03, 0.2, 0.49]) {
      expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 9);
    }
  });
  test('rises, also where its two formulas meet', () => {
    const values = Array.from({ length: 9999 }, (_, i) => normalQuantile((i + 1) / 10_000));
    expect(values.every((value, i) => i === 0 || value > (values[i - 1] ?? value))).toBe(true);
  });
});

describe('the even sample', () => {
  const [points, dimensions] = [512, 13];
  const sample = evenSample(points, dimensions);
  const column = (k: number) =>
    Float64Array.from({ length: points }, (_, n) => sample[n * dimensions + k] ?? Number.NaN);

  test('is the same every time', () => {
    expect(evenSample(points, dimensions)).toEqual(sample);
  });
  test('lies inside 0 and 1', () => {
    expect(sample.every((x) => x > 0 && x < 1)).toBe(true);
  });
  test('fills every coordinate evenly', () => {
    for (let k = 0; k < dimensions; k += 1) {
      const sorted = column(k).sort();
      const discrepancy = Math.max(...Array.from(sorted, (x, n) => Math.abs(x - (n + 0.5) / points)));
      // a random sample of this size stays below 0.06 in 95 of 100 cases
      expect(discrepancy, `coordinate ${k}`).toBeLessThan(0.03);
    }
  });
  test('reaches into both tails of every coordinate, as the 5 % and 95 % of a plan need', () => {
    for (let k = 0; k < dimensions; k += 1) {
      const share = (inside: (x: number) => boolean) => column(k).filter(inside).length / points;
      expect(Math.abs(share((x) => x < 0.05) - 0.05), `coordinate ${k}, low`).toBeLessThan(0.01);
      expect(Math.abs(share((x) => x > 0.95) - 0.05), `coordinate ${k}, high`).toBeLessThan(0.01);
    }
  });
  test('ties no two coordinates together', () => {
    for (let a = 0; a < dimensions; a += 1) {
      for (let b = a + 1; b < dimensions; b += 1) {
        const [x, y] = [column(a), column(b)];
        const covariance = x.reduce((sum, value, n) => sum + (value - 0.5) * ((y[n] ?? 0) - 0.5), 0) / points;
        expect(Math.abs(12 * covariance), `${a} and ${b}`).toBeLessThan(0.1);
      }
    }
  });
});

describe('the sample quantile', () => {
  const sorted = Float64Array.of(1, 2, 4, 8);
  test.each([
    [0, 1],
    [1, 8],
    [0.5, 3],
    [1 / 3, 2],
    [0.95, 7.4],
  ])('at %d is %d', (p, value) => {
    expect(quantile(sorted, p)).toBeCloseTo(value, 12);
  });
  test('of one entry is that entry', () => {
    expect(quantile(Float64Array.of(3), 0.05)).toBe(3);
  });
});
