import { describe, expect, test } from 'vitest';
import type { Run } from '../../../src/lib/core/run/run.ts';
import { earliestOff, lastStop, runInDoubt, soFar } from '../../../src/lib/session/run-log.ts';
import { figureOf, pendant, planOf } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const at = (minutes: number): number => T0 + minutes * MINUTE;
const plan = planOf(pendant());

const start = { type: 'start.pressed', at: at(0) };
const stop = { type: 'stop.pressed', at: at(10), why: 'look' };
const gone = { type: 'job.restored', at: at(60) };
const zero = { type: 'meter.read', reading: 'zero', at: at(61) };

const shortRun: Run = { startedAt: at(0), stoppedAt: at(10), offAt: at(10.5) };
const lostRun: Run = { startedAt: at(0), stoppedAt: at(60), offAt: at(61) };
const reading = { at: at(4), amps: 0.5, volts: null, celsius: null, note: '' };

/** 0.6 A for 15 min */
const target = { amps: 0.6, chargeAh: 0.15, minutes: 15, countsCharge: true };

const job = (change = {}) => aJob('a', { planAtStart: plan, events: [start, gone, zero], ...change });

describe('how a run came to its stop', () => {
  test.each([
    ['by hand, with its reason', [start, stop, zero], { why: 'look', symptom: null }],
    [
      'because something looked wrong',
      [start, { ...stop, why: 'wrong', symptom: 'pool' }],
      { why: 'wrong', symptom: 'pool' },
    ],
    [
      'in a record without reasons',
      [start, { type: 'stop.pressed', at: at(10) }],
      { why: 'done', symptom: null },
    ],
    ['because the page went', [start, gone, zero], { why: 'page-went', symptom: null }],
    [
      'because the page went and the supply was found off',
      [start, gone, { type: 'supply.seen', says: 'off', at: at(60.5) }, zero],
      { why: 'page-went', symptom: null },
    ],
    [
      'by hand, though the page was gone meanwhile and found it on',
      [start, { ...gone, at: at(5) }, { type: 'supply.seen', says: 'on', at: at(6) }, stop, zero],
      { why: 'look', symptom: null },
    ],
    ['by hand, the page gone only after', [start, stop, gone, zero], { why: 'look', symptom: null }],
    [
      'the last run counts',
      [start, stop, zero, { ...start, at: at(90) }, gone],
      { why: 'page-went', symptom: null },
    ],
  ])('%s', (_, events, expected) => {
    expect(lastStop(events)).toEqual(expected);
  });
  test('is unknown before the first, and while a run is on', () => {
    expect(lastStop([])).toBeNull();
    expect(lastStop([start, stop, zero, { ...start, at: at(90) }])).toBeNull();
  });
});

describe('the earliest the current may have ended', () => {
  test('is when Stop was pressed', () => {
    expect(earliestOff(shortRun, [start, stop, zero], [], at(99))).toBe(at(10));
  });
  test('is when the page that went was last heard from', () => {
    expect(earliestOff(lostRun, [start, gone, zero], [], at(99))).toBe(at(0));
    expect(earliestOff(lostRun, [start, gone, zero], [reading], at(99))).toBe(at(4));
  });
  test('is when the page was last heard from before it went, not while it was asked', () => {
    const off = { type: 'supply.seen', says: 'not-sure', at: at(62) };
    const run: Run = { startedAt: at(0), stoppedAt: at(62), offAt: at(63) };
    expect(earliestOff(run, [start, gone, off, zero], [reading], at(99))).toBe(at(4));
    // found on once in between: current flowed till then at least
    const on = { type: 'supply.seen', says: 'on', at: at(20) };
    expect(earliestOff(run, [start, { ...gone, at: at(19) }, on, gone, off], [reading], at(99))).toBe(at(20));
  });
});

describe('a run whose end is in doubt', () => {
  test('is asked about', () => {
    expect(runInDoubt(job(), [lostRun], target)).toMatchObject({
      earliest: at(0),
      latest: at(61),
      planned: at(15),
    });
  });
  test('is one that was stopped and then left for long before the meter was read', () => {
    const slow = { ...shortRun, offAt: at(300) };
    expect(runInDoubt(job({ events: [start, stop] }), [slow], target)).toMatchObject({
      earliest: at(10),
      planned: at(15),
    });
  });
  test('offers the planned stop only where it lies between', () => {
    const early = { ...lostRun, stoppedAt: at(10), offAt: at(11) };
    const events = [start, { ...gone, at: at(10) }, zero];
    expect(runInDoubt(job({ events }), [early], target)).toMatchObject({ latest: at(11), planned: null });
  });
  test('is not one that ended as usual, nor one that has been told, nor one that goes on', () => {
    expect(runInDoubt(job({ events: [start, stop, zero] }), [shortRun], target)).toBeNull();
    expect(runInDoubt(job({ switchedOff: { [String(at(0))]: at(5) } }), [lostRun], target)).toBeNull();
    expect(runInDoubt(job(), [{ ...lostRun, offAt: null }], target)).toBeNull();
  });
});

describe('so far', () => {
  test('goes by the plan as it stood at the start', () => {
    const other = planOf(pendant(), { 'piece.depth': { value: 0.2, unit: 'mm' } });
    const so = soFar(job(), [shortRun], other, at(99));
    expect(so.target?.chargeAh).toBe(soFar(job(), [], null, at(0)).target?.chargeAh);
  });
  test('gives the planned depth, with its range, at the planned charge', () => {
    const { target } = soFar(job(), [], null, at(0));
    const minutes = ((target?.chargeAh ?? 0) / (target?.amps ?? 1)) * 60;
    const done: Run = { startedAt: at(0), stoppedAt: at(minutes), offAt: at(minutes) };
    const so = soFar(job({ events: [start, { ...stop, at: at(minutes) }, zero] }), [done], null, at(999));
    const depth = figureOf(plan, 'depth');
    expect(so.depth?.value).toBeCloseTo(depth.value, 3);
    expect(so.depth?.low).toBeCloseTo(depth.low, 3);
    expect(so.depth?.high).toBeCloseTo(depth.high, 3);
  });
  test('spans both ends of a run in doubt, till it is told', () => {
    const doubtful = soFar(job({ readings: [reading] }), [lostRun], null, at(99));
    expect(doubtful.leastChargeAh).toBeCloseTo((4 * 0.5) / 60, 9);
    expect(doubtful.chargeAh).toBeCloseTo((61 * 0.5) / 60, 9);
    const told = job({ readings: [reading], switchedOff: { [String(at(0))]: at(20) } });
    const known = soFar(told, [lostRun], null, at(99));
    expect(known.chargeAh).toBeCloseTo((20 * 0.5) / 60, 9);
    expect(known.leastChargeAh).toBe(known.chargeAh);
    expect(known.on).toBe(20 * MINUTE);
  });
  test('knows nothing without a plan', () => {
    expect(soFar(aJob('b'), [shortRun], null, at(99))).toMatchObject({
      target: null,
      depth: null,
      chargeAh: 0,
    });
  });
});
