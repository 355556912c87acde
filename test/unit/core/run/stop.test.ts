import { describe, expect, test } from 'vitest';
import { minutesCalled, nextLook, nextReading, stopAt } from '../../../../src/lib/core/run/stop.ts';
import { fromMinutes } from '../../../../src/lib/core/units/time.ts';
import { at, reads, run, target } from '../../../fixtures/bench-run.ts';

const byTime = { ...target, countsCharge: false };

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

test.each([
  [5.01, null],
  [5, 5],
  [1.01, 5],
  [1, 1],
  [0.01, 1],
  [0, null],
  [-3, null],
] as const)('with %d min left, %s is called', (left, called) => {
  expect(minutesCalled(fromMinutes(left))).toBe(called);
});
