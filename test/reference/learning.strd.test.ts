import { expect } from 'vitest';
import { lineAfter } from '../../src/lib/core/learn/line.ts';
import { momentsOf } from '../../src/lib/core/learn/mean.ts';
import { check } from './check.ts';

/** A line of which nothing was believed before. */
const flat = { m: [0, 0], v: [1e14, 0, 1e14], a: 0, b: 0 } as const;
const repeated = (first: number, low: number, high: number): readonly number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, n) => (n % 2 === 0 ? low : high)),
];
const deviation = (values: readonly number[]): number => {
  const { count, squares } = momentsOf(values);
  return Math.sqrt(squares / (count - 1));
};
/** The sum of squares less the square of the sum: what must fail. */
const onePass = (values: readonly number[]): number => {
  const sum = values.reduce((all, one) => all + one, 0);
  const squares = values.reduce((all, one) => all + one * one, 0);
  return Math.sqrt((squares - sum ** 2 / values.length) / (values.length - 1));
};

check('nistStrd', 'NumAcc1: mean 10000002, deviation 1', () => {
  const values = [10000001, 10000003, 10000002];
  expect(momentsOf(values).mean).toBeCloseTo(10000002, 8);
  expect(deviation(values)).toBeCloseTo(1, 12);
});
for (const [name, first, low, high, mean] of [
  ['NumAcc2', 1.2, 1.1, 1.3, 1.2],
  ['NumAcc3', 1000000.2, 1000000.1, 1000000.3, 1000000.2],
  ['NumAcc4', 10000000.2, 10000000.1, 10000000.3, 10000000.2],
] as const)
  check('nistStrd', `${name}: mean ${mean}, deviation 0.1`, () => {
    const values = repeated(first, low, high);
    expect(momentsOf(values).mean / mean).toBeCloseTo(1, 14);
    expect(deviation(values)).toBeCloseTo(0.1, 7);
    if (mean > 1e6) expect(Math.abs(onePass(values) - 0.1) < 1e-6).toBe(false);
  });
check('nistStrd', 'NoInt1: slope through the origin 2.07438016528926', () => {
  // the offset is held at nothing
  const { m } = lineAfter(
    { m: [0, 0], v: [1e-12, 0, 1e14], a: 0, b: 0 },
    Array.from({ length: 11 }, (_, n) => [60 + n, 130 + n] as const),
  );
  expect(m[1]).toBeCloseTo(2.07438016528926, 9);
});
check('nistStrd', 'NoInt2: slope through the origin 0.727272727272727', () => {
  const { m } = lineAfter({ m: [0, 0], v: [1e-12, 0, 1e14], a: 0, b: 0 }, [
    [4, 3],
    [5, 4],
    [6, 4],
  ]);
  expect(m[1]).toBeCloseTo(0.727272727272727, 9);
});
check('nistStrd', 'a line without noise comes back', () => {
  const { m } = lineAfter(
    flat,
    [1, 2, 5, 9].map((x) => [x, 3 + 0.25 * x] as const),
  );
  expect(m[0]).toBeCloseTo(3, 6);
  expect(m[1]).toBeCloseTo(0.25, 6);
});
