import { expect } from 'vitest';
import { lineAfter, lineAt } from '../../src/lib/core/learn/line.ts';
import { meanOf, nextOf, quantileOf, updated } from '../../src/lib/core/learn/mean.ts';
import { pooled } from '../../src/lib/core/learn/pooling.ts';
import { check, near } from './check.ts';

const rates = [0.91, 0.88, 0.97, 0.86, 0.92].map(Math.log);
const belief = updated({ m: Math.log(0.95), kappa: 2, a: 3, b: 0.02 }, rates);

check('learningChecks', 'A: five efficiencies, belief after them', () => {
  expect(belief.m).toBeCloseTo(-0.0841991922735, 12);
  expect(belief.kappa).toBe(7);
  expect(belief.a).toBe(5.5);
  expect(belief.b).toBeCloseTo(0.0257495757367, 12);
  const oneByOne = rates.toReversed().reduce((so, rate) => updated(so, [rate]), {
    m: Math.log(0.95),
    kappa: 2,
    a: 3,
    b: 0.02,
  });
  expect(oneByOne.m).toBeCloseTo(belief.m, 13);
  expect(oneByOne.b).toBeCloseTo(belief.b, 13);
});
check('learningChecks', 'A: the next efficiency, t with 11 degrees of freedom', () => {
  const next = nextOf(belief);
  expect(next).toMatchObject({ freedom: 11, location: expect.closeTo(-0.0841991923, 9) as number });
  expect(next.scale).toBeCloseTo(0.0731475303, 9);
  expect(Math.exp(next.location)).toBeCloseTo(0.919248, 6);
  expect(Math.exp(quantileOf(next, 0.05))).toBeCloseTo(0.806087, 5);
  expect(Math.exp(quantileOf(next, 0.95))).toBeCloseTo(1.048295, 5);
  expect(meanOf(belief).scale).toBeCloseTo(0.0258615574, 9);
});
check('learningChecks', 'A: before any job, 0.782 to 1.154', () => {
  const next = nextOf({ m: Math.log(0.95), kappa: 2, a: 3, b: 0.02 });
  near(Math.exp(quantileOf(next, 0.05)), 0.782, 1e-3);
  near(Math.exp(quantileOf(next, 0.95)), 1.154, 1e-3);
});

const volts = lineAfter(
  { m: [1.8, 1], v: [64, 0, 16], a: 3, b: 0.005 },
  (
    [
      [0.31, 2.42],
      [0.52, 2.8],
      [0.98, 3.71],
      [1.47, 4.65],
    ] as const
  ).map(([amps, shown]) => [1.66 * amps, shown] as const),
);
check('learningChecks', 'E: volts against amps, the line after four readings', () => {
  expect(volts.m[0]).toBeCloseTo(1.8168630969, 9);
  expect(volts.m[1]).toBeCloseTo(1.1593234144, 9);
  expect(volts.a).toBe(5);
  expect(volts.b).toBeCloseTo(0.006005832, 9);
  expect(volts.v.map((one) => Number(one.toFixed(10)))).toEqual([1.0515536584, -0.5918757639, 0.4365176158]);
});
check('learningChecks', 'E: at 1.2 A, 4.0512 to 4.2012 V', () => {
  const at = lineAt(volts, 1.2 * 1.66);
  expect(at.freedom).toBe(10);
  expect(at.location).toBeCloseTo(4.1262353383, 9);
  expect(at.scale).toBeCloseTo(0.0413816799, 9);
  expect(quantileOf(at, 0.05)).toBeCloseTo(4.0512, 4);
  expect(quantileOf(at, 0.95)).toBeCloseTo(4.2012, 4);
});

const groups = [
  [0.97, 0.95, 0.99, 0.96],
  [0.9, 0.86],
  [1.02, 0.93, 0.97],
  [0.8],
  [0.72, 0.78, 0.75, 0.7, 0.81],
].map((values) => ({ values: values.map(Math.log) }));
const five = pooled(groups, { mean: Math.log(0.9), spread: 0.25, between: 0.15, within: 0.1 });
check('learningChecks', 'F: five groups lend each other what they know (0.05 %)', () => {
  for (const [g, wanted] of [0.96215, 0.87908, 0.96549, 0.81167, 0.75582].entries())
    near(Math.exp(five.groups[g]?.mean ?? NaN), wanted, 5e-4);
  for (const [g, wanted] of [0.0259, 0.0351, 0.0299, 0.0486, 0.0238].entries())
    near(five.groups[g]?.deviation ?? NaN, wanted, 5e-3);
});
check('learningChecks', 'F: scales, and a group that nothing is known of', () => {
  near(five.between, 0.13116, 1e-3);
  near(five.within, 0.05066, 1e-3);
  near(five.other.mean, -0.1363, 2e-3);
  near(five.other.deviation, 0.1528, 5e-3);
});
