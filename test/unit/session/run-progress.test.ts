import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/lib/notebook/records.ts';
import type { Run } from '../../../src/lib/procedure/machine.ts';
import {
  alarmsOf,
  chargeSoFar,
  depthByLoss,
  energised,
  nextLook,
  nextReading,
  stopAt,
  stretchesOf,
} from '../../../src/lib/session/run-progress.ts';
import type { Target } from '../../../src/lib/session/run-progress.ts';
import { figureOf, pendant, planOf } from '../../fixtures/jobs.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const at = (minutes: number): number => T0 + minutes * MINUTE;

const run = (start: number, off: number | null = null, stopped: number | null = off): Run => ({
  startedAt: at(start),
  stoppedAt: stopped === null ? null : at(stopped),
  offAt: off === null ? null : at(off),
});
const reads = (minutes: number, amps: number | null, celsius: number | null = null): Reading => ({
  at: at(minutes),
  amps,
  volts: null,
  celsius,
  note: '',
});
/** 0.6 A for 15 min */
const target: Target = { amps: 0.6, chargeAh: 0.15, minutes: 15, countsCharge: true };
const byTime: Target = { ...target, countsCharge: false };

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
    expect(energised(runs, at(30))).toBe(15 * MINUTE);
  });
  test('counts till the meter read zero, not till Stop was pressed', () => {
    expect(energised([run(0, 6, 5)], at(30))).toBe(6 * MINUTE);
    expect(energised([run(0, null, 5)], at(30))).toBe(5 * MINUTE);
  });
  test('never runs backwards when a clock was set back', () => {
    expect(energised([run(0)], at(-3))).toBe(0);
    expect(chargeSoFar([run(0)], [], target, at(-3))).toBe(0);
  });
  test('is the area under its stretches, end to end', () => {
    const pieces = stretchesOf([run(0, 10)], [reads(4, 0.3), reads(8, 0.9)], target, at(10));
    expect(pieces.map(({ from, to }) => [(from - T0) / MINUTE, (to - T0) / MINUTE])).toEqual([
      [0, 4],
      [4, 8],
      [8, 10],
    ]);
  });
});

describe('the stop', () => {
  test('stands still while nothing is read', () => {
    expect(stopAt([run(0)], [], target, at(0))).toBeCloseTo(at(15), 0);
    expect(stopAt([run(0)], [], target, at(9))).toBeCloseTo(at(15), 0);
  });
  test('moves out when fewer amps flow, and in when more do', () => {
    expect(stopAt([run(0)], [reads(0, 0.3)], target, at(0))).toBeCloseTo(at(30), 0);
    expect(stopAt([run(0)], [reads(0, 0.9)], target, at(0))).toBeCloseTo(at(10), 0);
  });
  test('counts earlier runs', () => {
    expect(stopAt([run(0, 5), run(20)], [], target, at(22))).toBeCloseTo(at(30), 0);
  });
  test('goes by the planned minutes without an ammeter, whatever is read', () => {
    expect(stopAt([run(0)], [reads(1, 0.1)], byTime, at(2))).toBeCloseTo(at(15), 0);
  });
  test('falls back on the minutes when no amps flow', () => {
    expect(stopAt([run(0)], [reads(1, 0)], target, at(2))).toBeCloseTo(at(15), 0);
  });
  test('adds a quarter to a bite wanted after the target', () => {
    expect(stopAt([run(0, 15), run(30)], [], target, at(30))).toBeCloseTo(at(33.75), 0);
    expect(stopAt([run(0, 15), run(30)], [], byTime, at(30))).toBeCloseTo(at(33.75), 0);
  });
});

describe('looks and readings', () => {
  test('the first look is the plan’s', () => {
    expect(nextLook([run(0)], 5, at(15), at(1))).toBe(at(5));
  });
  test('then each time the time with current on has doubled, ten minutes apart at most', () => {
    expect(nextLook([run(0, 5), run(10)], 5, at(60), at(10))).toBe(at(15));
    expect(nextLook([run(0, 5), run(10, 15), run(20)], 5, at(60), at(20))).toBe(at(30));
    expect(nextLook([run(0, 40), run(50)], 5, at(90), at(50))).toBe(at(60));
  });
  test('none stands after the stop', () => {
    expect(nextLook([run(0)], 5, at(4), at(1))).toBeNull();
    expect(nextLook([], 5, at(4), at(1))).toBeNull();
  });
  test('a reading is due five minutes after the last, or after the start', () => {
    expect(nextReading([run(0)], [])).toBe(at(5));
    expect(nextReading([run(0)], [reads(3, 0.5)])).toBe(at(8));
    expect(nextReading([run(0, 5), run(20)], [reads(3, 0.5)])).toBe(at(25));
    expect(nextReading([], [])).toBeNull();
  });
});

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
