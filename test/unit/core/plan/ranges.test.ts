import { describe, expect, test } from 'vitest';
import { findBoughtSalt } from '../../../../src/lib/core/facts/salts.ts';
import { budgetFor, inputIds, medianDraw, pairingOf } from '../../../../src/lib/core/plan/budget.ts';
import type { InputId } from '../../../../src/lib/core/plan/budget.ts';
import { rangesOf } from '../../../../src/lib/core/plan/ranges.ts';
import { jobOf, pendant } from '../../../fixtures/jobs.ts';

const salt = findBoughtSalt('NaNO3');
if (salt === null) throw new Error('no sodium nitrate');
const budget = budgetFor(jobOf(pendant()), pairingOf('sterling-925', salt), 0.1);

/** 5 % and 95 % of what a plan would give for one input alone. */
function rangeOf(id: InputId): readonly [number, number] {
  const outcomeOf = (draw: ReturnType<typeof medianDraw>) => ({ depth: draw[id] });
  return rangesOf(budget, outcomeOf, outcomeOf(medianDraw(budget))).depth ?? [Number.NaN, Number.NaN];
}

/** The 95 % of the standard normal distribution. */
const Z95 = 1.6448536;

describe('low and high are the 5 % and 95 % of the budget:', () => {
  test.each(inputIds.filter((id) => budget[id].spread.kind === 'log'))('%s, in its logarithm', (id) => {
    const { median, spread } = budget[id];
    const sd = spread.kind === 'log' ? spread.sd : 0;
    const [low, high] = rangeOf(id);
    expect(Math.abs(Math.log(low / median) + Z95 * sd)).toBeLessThanOrEqual(0.05 * Z95 * sd);
    expect(Math.abs(Math.log(high / median) - Z95 * sd)).toBeLessThanOrEqual(0.05 * Z95 * sd);
  });
  test('offset, as it stands', () => {
    const { median, spread } = budget.thresholdVoltage;
    const sd = spread.kind === 'normal' ? spread.sd : 0;
    const [low, high] = rangeOf('thresholdVoltage');
    expect(Math.abs(low - median + Z95 * sd)).toBeLessThanOrEqual(0.05 * Z95 * sd);
    expect(Math.abs(high - median - Z95 * sd)).toBeLessThanOrEqual(0.05 * Z95 * sd);
  });
  test('slowness, far to the slow side and little to the fast', () => {
    const { spread } = budget.slowness;
    const [slow, fast] = spread.kind === 'slowSide' ? [spread.slow, spread.fast] : [0, 0];
    const [low, high] = rangeOf('slowness');
    expect(Math.abs(Math.log(low) + Z95 * slow)).toBeLessThanOrEqual(0.05 * Z95 * slow);
    expect(Math.abs(Math.log(high) - Z95 * fast)).toBeLessThanOrEqual(0.05 * Z95 * fast);
  });
});

test('the value at the medians is always inside', () => {
  // an outcome far below its median in nearly every draw
  const outcomeOf = (draw: ReturnType<typeof medianDraw>) => ({
    depth: draw.currentEfficiency === budget.currentEfficiency.median ? 9 : 1,
  });
  expect(rangesOf(budget, outcomeOf, { depth: 9 }).depth).toEqual([1, 9]);
});
