import { describe, expect, test } from 'vitest';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { influencesFor, trialFor } from '../../../../src/lib/core/plan/questions.ts';
import type { TriedId } from '../../../../src/lib/core/plan/what-if.ts';
import { amount, cuff, figureOf, jobOf, patched, pendant } from '../../../fixtures/jobs.ts';

const byAmps = {
  'supply.control': 'amps',
  'supply.amps': amount(0.4, 'A'),
  'supply.maxVolts': amount(8, 'V'),
  'supply.volts': undefined,
  'supply.maxAmps': undefined,
};

describe('what moves the depth', () => {
  test('adds up to the whole, greatest first, each about the planned depth', () => {
    const job = jobOf(pendant());
    const all = influencesFor(job);
    const depth = figureOf(planJob(job), 'depth').value;
    expect(all.length).toBeGreaterThan(1);
    expect(all.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(all.map(({ share }) => share)).toEqual(all.map(({ share }) => share).toSorted((a, b) => b - a));
    for (const { low, high } of all) {
      expect(low).toBeLessThanOrEqual(depth + 1e-9);
      expect(high).toBeGreaterThanOrEqual(depth - 1e-9);
    }
  });
  test('is bare area and bite rate where amps are counted, not leads and films', () => {
    const ids = influencesFor(jobOf(patched(pendant(), byAmps))).map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(['areaFactor', 'currentEfficiency', 'meterFactor']));
    expect(ids).not.toContain('leads');
    expect(ids).not.toContain('slowness');
  });
  test('is films and contact first where only the clock is there', () => {
    // the cuff's adapter holds its current down: what the bath passes beyond that moves nothing
    const roomy = { 'supply.maxAmps': amount(50, 'A') };
    const [first] = influencesFor(jobOf(patched(cuff(), roomy)));
    expect(first?.id).toBe('slowness');
  });
  test('is nothing for a job that is refused', () => {
    expect(influencesFor(jobOf(patched(pendant(), { 'bath.salt': 'NaCl' })))).toEqual([]);
  });
});

describe('what another value makes of it', () => {
  // an adapter that is asked for less than it gives
  const job = jobOf(patched(cuff(), { 'supply.maxAmps': amount(50, 'A'), 'supply.volts': amount(4, 'V') }));
  const all = influencesFor(job);
  const of = (id: string) => {
    const one = all.find((influence) => influence.id === id);
    if (!one?.span) throw new Error(`nothing to try for ${id}`);
    return { ...one, span: one.span };
  };
  test('by the clock: gap, knob, strength, warmth, time, area, bite rate and contact all move it', () => {
    for (const id of [
      'gap',
      'knob',
      'strength',
      'temperature',
      'time',
      'areaFactor',
      'currentEfficiency',
      'slowness',
    ] as const) {
      const { span, low, high } = of(id);
      const ends = [span.low, span.high].map((value) => trialFor(job, { id, value })?.depth ?? NaN);
      expect(Math.min(...ends)).toBeCloseTo(low, 6);
      expect(Math.max(...ends)).toBeCloseTo(high, 6);
      // as planned, nothing moves
      expect(trialFor(job, { id, value: span.planned })?.depth).toBeCloseTo(
        figureOf(planJob(job), 'depth').value,
        1,
      );
    }
  });
  test('goes the way a maker expects', () => {
    const depthAt = (id: TriedId, by: number) =>
      trialFor(job, { id, value: by * of(id).span.planned })?.depth ?? NaN;
    expect(depthAt('gap', 0.7)).toBeGreaterThan(depthAt('gap', 1.1));
    for (const id of ['knob', 'strength', 'temperature', 'time'] as const)
      expect(depthAt(id, 1.1), id).toBeGreaterThan(depthAt(id, 0.9));
    // twice the time is twice the depth, but for the bath that warms
    expect(depthAt('time', 1.2) / depthAt('time', 0.6)).toBeGreaterThan(1.95);
  });
  test('where amp-hours are counted the gap moves the minutes, not the depth', () => {
    const counted = jobOf(patched(pendant(), byAmps));
    const near = trialFor(counted, { id: 'knob', value: 0.2 });
    const planned = trialFor(counted, { id: 'knob', value: 0.4 });
    expect(near?.depth).toBeCloseTo(planned?.depth ?? NaN, 1);
    expect((near?.minutes ?? NaN) / (planned?.minutes ?? NaN)).toBeCloseTo(2, 1);
    expect(influencesFor(counted).map(({ id }) => id)).not.toContain('gap');
  });
  test('is refused where it cannot be planned', () => {
    expect(trialFor(job, { id: 'gap', value: 5000 })).toBeNull();
    expect(trialFor(job, { id: 'temperature', value: 80 })).toBeNull();
  });
});
