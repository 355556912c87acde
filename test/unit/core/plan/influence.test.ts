import { describe, expect, test } from 'vitest';
import { influencesFor, planJob } from '../../../../src/lib/core/plan/plan-job.ts';
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
    expect(ids).toEqual(expect.arrayContaining(['areaFactor', 'yield', 'meterFactor']));
    expect(ids).not.toContain('leads');
    expect(ids).not.toContain('slowness');
  });
  test('is films and contact first where only the clock is there', () => {
    const [first] = influencesFor(jobOf(cuff()));
    expect(first?.id).toBe('slowness');
  });
  test('is nothing for a job that is refused', () => {
    expect(influencesFor(jobOf(patched(pendant(), { 'bath.salt': 'NaCl' })))).toEqual([]);
  });
});
