import { describe, expect, test } from 'vitest';
import { alarmsOf } from '../../src/lib/core/run/alarms.ts';
import { departureOf } from '../../src/lib/core/run/departure.ts';
import type { Cause } from '../../src/lib/core/run/departure.ts';
import { fromMinutes } from '../../src/lib/core/units/time.ts';
import { simulatedRun } from '../fixtures/simulated-runs.ts';

const RUNS = 1000;
const count = (holds: (seed: number) => boolean): number =>
  Array.from({ length: RUNS }, (_, seed) => holds(seed)).filter(Boolean).length / RUNS;
const alarms = (seed: number, noise: number): boolean => {
  const { seen, expected } = simulatedRun(null, seed, noise);
  return seen.some((_, n) =>
    alarmsOf(seen.slice(0, n + 1), expected).some((alarm) => alarm.startsWith('amps')),
  );
};
const departs = (seed: number, noise: number): boolean => {
  const { seen, expected } = simulatedRun(null, seed, noise);
  // looked at after every reading, as a maker does
  return seen.some((_, n) => departureOf(seen.slice(0, n + 1), expected) !== null);
};

describe('simulated runs, each looked at after every reading', () => {
  test('healthy ones raise an alarm at most once in twenty, also with twice the noise', () => {
    expect(count((seed) => departs(seed, 1))).toBeLessThanOrEqual(0.05);
    expect(count((seed) => departs(seed, 2))).toBeLessThanOrEqual(0.05);
  });
  test('healthy ones never show amps that have jumped or gone, also with twice the noise', () => {
    expect(count((seed) => alarms(seed, 1))).toBe(0);
    expect(count((seed) => alarms(seed, 2))).toBe(0);
  });
  test.each(['resist-lifts', 'film', 'clip-wet', 'contact', 'warm', 'bridged'] satisfies Cause[])(
    '%s is the likeliest cause named in nine of ten',
    (fault) => {
      const named = count((seed) => {
        const { seen, expected } = simulatedRun(fault, seed);
        return departureOf(seen, expected)?.causes[0] === fault;
      });
      expect(named).toBeGreaterThanOrEqual(0.9);
    },
  );
});

describe('a run', () => {
  const expected = {
    amps: 0.4,
    offset: 2,
    holds: 'volts',
    celsius: 20,
    slope: 0.02,
    isSilver: true,
    limits: { warn: 35, stop: 40, volts: 10 },
  } as const;
  const at = (
    minutes: number,
    amps: number | null,
    volts: number | null = null,
    celsius: number | null = null,
  ) => ({
    at: fromMinutes(minutes),
    amps,
    volts,
    celsius,
  });
  test('of one reading, or of none that can be used, says nothing', () => {
    expect(departureOf([], expected)).toBeNull();
    expect(departureOf([at(1, 0.4)], expected)).toBeNull();
    expect(departureOf([at(1, null, 5), at(5, null, 5), at(9, null, 5)], expected)).toBeNull();
  });
  test('whose amps are held is told by its volts', () => {
    const held = { ...expected, holds: 'amps' } as const;
    // half of the volts that drive: twice as much passes for each
    const seen = [at(1, 0.5, 4), at(6, 0.5, 4), at(11, 0.5, 3), at(16, 0.5, 3)];
    expect(departureOf(seen, held)).toMatchObject({ causes: ['clip-wet', 'resist-lifts'] });
    expect(departureOf(seen, held)?.ratio).toBeCloseTo(2, 1);
    expect(
      departureOf(
        seen.map((one) => ({ ...one, volts: 4 })),
        held,
      ),
    ).toBeNull();
  });
  test('that warms as it was planned to is healthy, and warm only from 35 °C', () => {
    const warming = (end: number) =>
      [0, 10, 20, 30].map((minutes) => {
        const celsius = 20 + ((end - 20) * minutes) / 30;
        return at(minutes + 1, 0.4 * (1 + 0.02 * (celsius - 20)), null, celsius);
      });
    expect(departureOf(warming(30), expected)).toBeNull();
    expect(departureOf(warming(35), expected)).toMatchObject({ causes: ['warm'] });
  });
  test('names no silver trees where there is no silver', () => {
    const runaway = [at(1, 0.4), at(6, 0.41), at(11, 0.5), at(16, 0.68), at(21, 1.1), at(26, 3)];
    expect(departureOf(runaway, expected)?.causes[0]).toBe('bridged');
    expect(departureOf(runaway, { ...expected, isSilver: false })?.causes).toEqual(['resist-lifts']);
  });
  test('that is dead has a loose contact or a film', () => {
    expect(departureOf([at(1, 0.4), at(6, 0.4), at(11, 0)], expected)?.causes).toEqual(['contact', 'film']);
  });
});
