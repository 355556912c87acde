import { describe, expect, test } from 'vitest';
import { defaultReadingUnits } from '../../../../src/lib/core/job/reading-units.ts';
import { alarmsOf, currentChanges, currentLimits } from '../../../../src/lib/core/run/alarms.ts';
import { departureOf } from '../../../../src/lib/core/run/departure.ts';
import type { Expected } from '../../../../src/lib/core/run/level.ts';
import type { Reading } from '../../../../src/lib/core/run/run.ts';
import { watchOf } from '../../../../src/lib/core/run/watch.ts';
import { readingTexts } from '../../../../src/lib/words/en/readings.ts';
import { runWatch } from '../../../../src/lib/words/en/run-watch.ts';
import { at, reads } from '../../../fixtures/bench-run.ts';
import { cuff, planOf } from '../../../fixtures/jobs.ts';

const expected: Expected = {
  amps: 0.6,
  offset: 1.5,
  holds: 'volts',
  celsius: 20,
  slope: 0.02,
  isSilver: true,
  limits: { warn: 35, stop: 40, volts: 10 },
};
const held: Expected = { ...expected, holds: 'amps' };
const judged = (reading: Partial<Reading>, before: readonly Reading[] = [], by: Expected = expected) =>
  alarmsOf([...before, { at: at(20), amps: null, volts: null, celsius: null, ...reading }], by);
const both = (minutes: number, amps: number, volts: number): Reading => ({ ...reads(minutes, amps), volts });

describe('a reading', () => {
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
  test('none means nothing', () => {
    expect(alarmsOf([], expected)).toEqual([]);
    expect(judged({}, [reads(1, 0.6), reads(2, 0.1)])).toEqual([]);
  });
});

describe('with the amps held, the volts show what has jumped or gone', () => {
  // 1.5 V drive nothing: from 5 to 9 V what passes for each falls to 0.47, from 5 to 3.5 V it rises to 1.75
  const before = [both(1, 0.6, 5), both(6, 0.6, 5)];
  test.each([
    [9, ['amps-gone']],
    [8, []],
    [4, []],
    [3.5, ['amps-jumped']],
  ] as const)('%d V after 5 V: %j', (volts, alarms) => {
    expect(judged({ amps: 0.6, volts }, before, held)).toEqual(alarms);
  });
  test('but an older reading with volts does not speak for a later one without', () => {
    expect(judged({ amps: 0.6 }, [...before, both(11, 0.6, 9)], held)).toEqual([]);
  });
  test('and what the meters may have made of a few tenths of a volt is no change', () => {
    expect(judged({ amps: 0.6, volts: 1.72 }, [both(1, 0.6, 1.9)], held)).toEqual([]);
  });
});

describe('a knob turned up', () => {
  const seen = [both(1, 0.4, 4), both(6, 0.4, 4), both(11, 0.72, 6)];
  test('alarms, since the amps are up, and is no fault of the cell', () => {
    expect(watchOf(seen, expected)).toEqual({ departure: null, alarms: ['amps-jumped'] });
  });
  test('does not hide a film that grows meanwhile', () => {
    expect(alarmsOf([both(1, 0.4, 3), both(6, 0.4, 3), both(11, 0.41, 5.5)], expected)).toEqual([
      'amps-gone',
    ]);
  });
});

describe('alarm and departure agree', () => {
  test('amps that have jumped or gone are a departure too, however few their readings', () => {
    const small = [reads(1, 0.03), reads(6, 0.03)];
    for (const [amps, alarm, ratio] of [
      [0.06, 'amps-jumped', 2],
      [0.01, 'amps-gone', 1 / 3],
    ] as const) {
      const seen = [...small, reads(11, amps)];
      expect(alarmsOf(seen, expected)).toEqual([alarm]);
      expect(departureOf(seen, expected)?.ratio, alarm).toBeCloseTo(ratio, 6);
    }
  });
  test('more current is told once, falling amps keep the alarm that warns of chlorine', () => {
    const up = [reads(1, 0.4), reads(6, 0.4), reads(11, 0.7)];
    expect(watchOf(up, expected)).toMatchObject({
      departure: { causes: ['clip-wet', 'resist-lifts'] },
      alarms: [],
    });
    const down = [reads(1, 0.4), reads(6, 0.4), reads(11, 0.1)];
    expect(watchOf(down, expected)).toMatchObject({
      departure: { causes: ['contact', 'film'] },
      alarms: ['amps-gone'],
    });
  });
  test('a warm bath does not hide amps that jumped', () => {
    const first = watchOf([reads(1, 1, 36)], expected);
    expect(first.departure?.causes).toEqual(['warm']);
    expect(first.alarms).toEqual(['amps-jumped', 'warm']);
  });
});

test('the plan’s amps count until something has been read', () => {
  expect(currentChanges(0.2, [], 0.6)).toEqual(['gone']);
  expect(currentChanges(0.2, [0.2], 0.6)).toEqual([]);
  // up from the first and down from the most
  expect(currentChanges(0.4, [0.2, 1], 0.6)).toEqual(['jumped', 'gone']);
});

test('every text that names how far says the limits that decide', () => {
  expect(currentLimits).toMatchObject({ jumped: 1.5, gone: 0.5 });
  expect(readingTexts['amps-jumped'].text).toMatch(/up by half/);
  expect(readingTexts['amps-gone'].text).toMatch(/below half/);
  expect(runWatch(planOf(cuff()).figures, defaultReadingUnits, ['amps', 'celsius']).at(-1)).toMatch(
    /^Chlorine: .* Amps falling below half/,
  );
});
