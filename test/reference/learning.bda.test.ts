import { expect } from 'vitest';
import { meanOf, momentsOf, quantileOf, updated } from '../../src/lib/core/learn/mean.ts';
import { pooled } from '../../src/lib/core/learn/pooling.ts';
import { check, near } from './check.ts';

/** Newcomb's 66 passages of light, deviations from 24 800 ns (recalled; their mean tells that none is wrong). */
const newcomb = [
  28, 26, 33, 24, 34, -44, 27, 16, 40, -2, 29, 22, 24, 21, 25, 30, 23, 29, 31, 19, 24, 20, 36, 32, 36, 28, 25,
  21, 28, 29, 37, 25, 28, 26, 30, 32, 36, 26, 30, 22, 36, 23, 27, 27, 28, 27, 31, 27, 26, 33, 26, 32, 32, 24,
  39, 28, 24, 25, 32, 25, 29, 27, 28, 29, 16, 23,
];
/** Nothing believed before: no weight, no shape but that of the flat prior. */
const flat = { m: 0, kappa: 1e-12, a: -0.5, b: 0 };

check('bda3', '§3.2, speed of light: mean 26.2, deviation 10.8', () => {
  const { count, mean, squares } = momentsOf(newcomb);
  expect(count).toBe(66);
  expect(mean).toBeCloseTo(26.2121, 4);
  expect(Math.sqrt(squares / 65)).toBeCloseTo(10.7453, 4);
});
check('bda3', '§3.2, speed of light: the mean lies in 23.6 to 28.9 with 95 %', () => {
  const mean = meanOf(updated(flat, newcomb));
  expect(quantileOf(mean, 0.025)).toBeCloseTo(23.571, 2);
  expect(quantileOf(mean, 0.975)).toBeCloseTo(28.854, 2);
});

const effects = [28, 8, -3, 7, -1, 1, 18, 12];
const errors = [15, 10, 16, 11, 9, 11, 10, 18];
const schools = effects.map((value, n) => ({ values: [value], known: errors[n] as number }));

check('bda3', '§5.5, eight schools: pooled estimate 7.7, variance 16.6', () => {
  const weights = errors.map((error) => 1 / error ** 2);
  const all = weights.reduce((sum, one) => sum + one, 0);
  // no difference between schools: the grid shrunk to nothing
  const alike = pooled(schools, { mean: 0, spread: Infinity, between: null, within: null }, 1e-6);
  near(alike.groups[0]?.mean ?? NaN, 7.68562, 1e-4);
  near((alike.groups[0]?.deviation ?? NaN) ** 2, 1 / all, 1e-4);
  near(1 / all, 16.58053, 1e-5);
});
check('bda3', '§5.5, eight schools: means of the effects, uniform between schools (1 %)', () => {
  const found = pooled(schools, { mean: 0, spread: Infinity, between: null, within: null }, 400);
  for (const [g, wanted] of [11.4, 7.895, 6.131, 7.645, 5.126, 6.139, 10.667, 8.457].entries())
    near(found.groups[g]?.mean ?? NaN, wanted, 1e-2);
  for (const [g, wanted] of [8.341, 6.275, 7.765, 6.546, 6.357, 6.71, 6.786, 7.888].entries())
    near(found.groups[g]?.deviation ?? NaN, wanted, 1e-2);
});
