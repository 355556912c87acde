import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../../../src/lib/core/cell/operating-point.ts';
import { runForTime, runToCharge, timeToWarm } from '../../../../src/lib/core/cell/warming.ts';
import type { WarmingCell } from '../../../../src/lib/core/cell/warming.ts';
import { warmGain } from '../../../../src/lib/core/chemistry/solution.ts';
import type { Supply } from '../../../../src/lib/core/cell/setup.ts';
import { findBoughtSalt } from '../../../../src/lib/core/facts/salts.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';
import { amount, figureOf, pendant, planOf } from '../../../fixtures/jobs.ts';

const common = { kind: 'bench', showsAmps: true, leads: null } as const;
const byVolts: Supply = { ...common, control: 'volts', volts: si<'voltage'>(7), maxAmps: null };
const byAmps: Supply = { ...common, control: 'amps', amps: si<'current'>(1), maxVolts: si<'voltage'>(9) };

/** 0.576 kg in a tub that loses 0.355 W/K, 3 Ω cold, 2 % better for each kelvin. */
const cell = (supply: Supply, cooling = 0.355, slope = 0.02): WarmingCell => ({
  stored: 0.576 * 4186,
  cooling,
  pointAt: (rise) =>
    operatingPoint(
      supply,
      si<'voltage'>(1),
      si<'resistance'>(3 / (1 + slope * rise) + 0.1),
      si<'voltage'>(9.5),
    ),
});
const hours = (n: number) => si<'time'>(n * 3600);
const ampHours = (n: number) => si<'charge'>(n * 3600);

describe('a cell that warms up', () => {
  test('held by amps takes the time of its charge, to the last digit', () => {
    expect(runToCharge(cell(byAmps), ampHours(1)).time).toBeCloseTo(3600, 9);
  });
  test('held by volts is done sooner than one that stayed cold, and passes more in the same time', () => {
    const cold = runToCharge(cell(byVolts, 0.355, 0), ampHours(2));
    expect(runToCharge(cell(byVolts), ampHours(2)).time).toBeLessThan(cold.time * 0.95);
    expect(runForTime(cell(byVolts), cold.time).charge).toBeGreaterThan(cold.charge * 1.05);
  });
  test('four steps are near enough to a thousand', () => {
    for (const [charge, tolerance] of [
      [0.2, 5e-4],
      [1, 5e-4],
      [4, 5e-3],
    ] as const) {
      const passed = ampHours(charge);
      const [few, many] = [runToCharge(cell(byVolts), passed), runToCharge(cell(byVolts), passed, 1000)];
      expect(Math.abs(few.time / many.time - 1)).toBeLessThan(tolerance);
      expect(Math.abs(few.rise / many.rise - 1)).toBeLessThan(tolerance);
    }
    const [few, many] = [timeToWarm(cell(byVolts), 15), timeToWarm(cell(byVolts), 15, 1000)];
    expect(Math.abs(few / many - 1)).toBeLessThan(1e-3);
  });
  test('charge and time are two ways of saying the same run', () => {
    const by = runForTime(cell(byVolts), hours(1));
    const back = runToCharge(cell(byVolts), by.charge);
    expect(Math.abs(back.time / by.time - 1)).toBeLessThan(3e-3);
    expect(Math.abs(back.rise / by.rise - 1)).toBeLessThan(3e-3);
  });
  test('gets to a temperature when a run of that time does; never, where cooling holds it below', () => {
    const time = timeToWarm(cell(byVolts), 10);
    expect(Math.abs(runForTime(cell(byVolts), time, 200).rise / 10 - 1)).toBeLessThan(2e-3);
    expect(timeToWarm(cell(byVolts, 5), 10)).toBe(Infinity);
    expect(timeToWarm(cell(byVolts), -1)).toBe(0);
  });
  test('a tub that loses nothing warms in proportion to its charge', () => {
    const { rise } = runToCharge(cell(byAmps, 0, 0), ampHours(1));
    expect(rise).toBeCloseTo((3600 * 4.1) / (0.576 * 4186), 9);
  });
});

describe('a warmer bath conducts better', () => {
  const salt = findBoughtSalt('NaNO3');
  if (salt === null) throw new Error('sodium nitrate is gone');
  const start = si<'temperature'>(293.15);
  test('by its slope, from 20 °C', () => {
    expect(warmGain(salt, start, 5)).toBeCloseTo(1 + (5 * salt.facts.conductivitySlope.value) / 100, 12);
  });
  test('but no gain is counted beyond 40 °C', () => {
    expect(warmGain(salt, start, 30)).toBe(warmGain(salt, start, 20));
  });
});

describe('in a plan', () => {
  const small = { 'tub.waterByJug': undefined, 'supply.maxAmps': undefined };
  test('the time by volts is shorter than charge over first amps, and a warm bath says when', () => {
    const plan = planOf(pendant(), { ...small, 'bath.temperature': amount(33, 'degC') });
    const cold = (figureOf(plan, 'charge').value / figureOf(plan, 'current').value) * 60;
    expect(figureOf(plan, 'run_time').value).toBeLessThan(cold);
    expect(figureOf(plan, 'minutes_to_warn_temperature').value).toBeGreaterThan(0);
  });
  test('a time that never comes is no figure', () => {
    const plan = planOf(pendant(), {
      'bath.temperature': amount(12, 'degC'),
      'supply.volts': amount(3, 'V'),
    });
    expect(plan.figures.minutes_to_stop_temperature).toBeUndefined();
  });
});
