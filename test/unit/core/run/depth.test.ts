import { describe, expect, test } from 'vitest';
import { depthByCharge, depthByLoss, isCoarse, meanDepth } from '../../../../src/lib/core/run/depth.ts';

/** 100 μm over the whole batch weigh 0.5 g */
const expected = { depth: 100, mass: 0.5, thickness: 800, areaFrom: 'area' } as const;

describe('depth by weight', () => {
  test('is the planned depth at the planned loss, whatever the amps were', () => {
    const found = depthByLoss(expected, 0.5, 0.01);
    expect(found?.value).toBeCloseTo(100, 9);
    expect(found?.low).toBeCloseTo(98 * 0.93, 9);
    expect(found?.high).toBeCloseTo(102 * 1.07, 9);
  });
  test('spans more where the bare area was guessed by eye', () => {
    const guessed = depthByLoss({ ...expected, areaFrom: 'share' }, 0.5, 0.01);
    expect(guessed?.high).toBeCloseTo(102 * 1.13, 9);
  });
  test('spans more with a coarse scale', () => {
    const coarse = depthByLoss(expected, 0.5, 1);
    expect(coarse?.high).toBeGreaterThan(300);
    expect(coarse?.low).toBe(0);
  });
  test('never exceeds the sheet', () => {
    expect(depthByLoss(expected, 500, 0.01)?.value).toBe(800);
  });
  test('is unknown without a loss, or without anything to lose', () => {
    expect(depthByLoss(expected, 0, 0.01)).toBeNull();
    expect(depthByLoss({ ...expected, mass: 0 }, 1, 0.01)).toBeNull();
  });
  test('is coarse below three steps of the scale', () => {
    expect(isCoarse(0.29, 0.1)).toBe(true);
    expect(isCoarse(0.31, 0.1)).toBe(false);
  });
});

test('depth by charge goes with the charge, its low end with the least that may have flowed', () => {
  const planned = { value: 100, low: 80, high: 120 };
  expect(depthByCharge(planned, { chargeAh: 0.2 }, 0.05, 0.1)).toEqual({ value: 50, low: 20, high: 60 });
  expect(depthByCharge(planned, { chargeAh: 0 }, 0.05, 0.1)).toEqual({ value: 0, low: 0, high: 0 });
});

test('the depth that counts is the mean of its points', () => {
  expect(meanDepth([90, 100, 125])).toBe(105);
  expect(meanDepth([])).toBe(0);
});
