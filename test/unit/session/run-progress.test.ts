import { describe, expect, test } from 'vitest';
import { alarmsOf, depthByLoss } from '../../../src/lib/session/run-progress.ts';
import type { Reading } from '../../../src/lib/notebook/records.ts';
import { figureOf, pendant, planOf } from '../../fixtures/jobs.ts';
import { reads as bare, target } from '../../fixtures/bench-run.ts';
const reads = (minutes: number, amps: number): Reading => ({ ...bare(minutes, amps), note: '' });

describe('a reading', () => {
  const limits = { warn: 35, stop: 40, volts: 10 };
  const judged = (reading: Partial<Reading>, before: readonly Reading[] = []) =>
    alarmsOf({ amps: null, volts: null, celsius: null, note: '', ...reading }, before, target, limits);

  test.each([
    [{ amps: 0.6, volts: 7, celsius: 25 }, []],
    [{ celsius: 34.9 }, []],
    [{ celsius: 35 }, ['warm']],
    [{ celsius: 39.9 }, ['warm']],
    [{ celsius: 40 }, ['stop-hot']],
    [{ amps: 0.3 }, []],
    [{ amps: 0.29 }, ['amps-gone']],
    [{ amps: 0 }, ['amps-gone']],
    [{ amps: 0.89 }, []],
    [{ amps: 0.91 }, ['amps-jumped']],
    [{ volts: 9.5 }, []],
    [{ volts: 10 }, ['volts-high']],
    [{ amps: 1, celsius: 41 }, ['stop-hot', 'amps-jumped']],
    [{ amps: 0.1, celsius: 36 }, ['amps-gone', 'warm']],
  ] as const)('%j means %j', (reading, alarms) => {
    expect(judged(reading)).toEqual(alarms);
  });
  test('is measured against what the run has shown, once it has shown something', () => {
    const slow = [reads(1, 0.2)];
    expect(judged({ amps: 0.2 }, slow)).toEqual([]);
    expect(judged({ amps: 0.35 }, slow)).toEqual(['amps-jumped']);
    expect(judged({ amps: 0.09 }, slow)).toEqual(['amps-gone']);
  });
  test('a slow fall is seen against the highest, a slow rise against the first', () => {
    const falling = [reads(1, 0.6), reads(2, 0.45), reads(3, 0.35)];
    expect(judged({ amps: 0.29 }, falling)).toEqual(['amps-gone']);
    const rising = [reads(1, 0.6), reads(2, 0.75), reads(3, 0.88)];
    expect(judged({ amps: 0.95 }, rising)).toEqual(['amps-jumped']);
  });
});

describe('depth by weight', () => {
  const plan = planOf(pendant());
  const mass = figureOf(plan, 'mass_removed').value;
  const depth = figureOf(plan, 'depth').value;

  test('is the planned depth at the planned loss, whatever the amps were', () => {
    const found = depthByLoss(plan, mass, 0.01);
    expect(found?.value).toBeCloseTo(depth, 6);
    expect(found?.low).toBeLessThan(depth);
    expect(found?.high).toBeGreaterThan(depth);
  });
  test('spans more with a coarse scale', () => {
    const [fine, coarse] = [depthByLoss(plan, mass, 0.01), depthByLoss(plan, mass, 1)];
    expect(coarse?.high).toBeGreaterThan(fine?.high ?? Infinity);
    expect(coarse?.low).toBe(0);
  });
  test('never exceeds the sheet', () => {
    expect(depthByLoss(plan, 1000 * mass, 0.01)?.value).toBeCloseTo(plan.job.piece.thickness * 1e6, 6);
  });
  test('is unknown without a loss or without a plan’s figures', () => {
    expect(depthByLoss(plan, 0, 0.01)).toBeNull();
    expect(depthByLoss({ ...plan, figures: {} }, 1, 0.01)).toBeNull();
  });
});
