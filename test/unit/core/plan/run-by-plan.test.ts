import { describe, expect, test } from 'vitest';
import { depthByWeight, targetOf, watchRun } from '../../../../src/lib/core/plan/run-by-plan.ts';
import { limits } from '../../../../src/lib/core/facts/limits.ts';
import type { SaltId } from '../../../../src/lib/core/facts/salts.ts';
import type { Plan } from '../../../../src/lib/core/plan/plan.ts';
import type { Reading, Run } from '../../../../src/lib/core/run/run.ts';
import { departureTexts } from '../../../../src/lib/words/en/departures.ts';
import { at, reads, run as runFrom } from '../../../fixtures/bench-run.ts';
import { cuff, figureOf, pendant, planOf, tokens } from '../../../fixtures/jobs.ts';

const run = runFrom(0);
const read = reads;
const departureIn = (plan: Plan | null, of: Run | undefined, readings: readonly Reading[]) =>
  watchRun(plan, of, readings).departure;

test('a run is measured against its own readings, with what came before it left out', () => {
  const plan = planOf(pendant());
  // of the run before
  const earlier = read(-5, 9);
  expect(departureIn(plan, run, [earlier, read(1, 0.4), read(6, 0.41)])).toBeNull();
  expect(departureIn(plan, run, [earlier, read(1, 0.4), read(6, 0.41), read(11, 0.75)])?.causes[0]).toBe(
    'clip-wet',
  );
  expect(departureIn(null, run, [])).toBeNull();
  expect(departureIn(plan, undefined, [read(1, 0.4), read(6, 2)])).toBeNull();
});

test('every departure names its cause and a safe next act, power off first wherever it could hurt', () => {
  for (const causes of [['film', 'contact'], ['bridged', 'resist-lifts'], ['clip-wet']] as const) {
    const { likely, act, change } = departureTexts({ causes, ratio: 1.8 });
    expect(change).toBe('For each volt 80 % more current flows than at first.');
    expect(likely).toMatch(/^Likely .+\.$/);
    expect(act).toMatch(/^Stop\. Supply off, meter at zero/);
  }
  expect(departureTexts({ causes: ['warm'], ratio: 1.02 }).change).toBe('');
  expect(departureTexts({ causes: ['contact', 'film'], ratio: 0.5 }).change).toContain('50 % less');
});

test('a brass batch by held amps is told by its volts', () => {
  const plan = planOf(tokens());
  const held = (minutes: number, volts: number): Reading => ({ ...read(minutes, 2), volts });
  const seen = [held(1, 6), held(6, 6), held(11, 4), held(16, 4)];
  expect(departureIn(plan, run, seen)?.ratio).toBeGreaterThan(1.3);
});

describe('a run goes by its plan', () => {
  test('by amps: what the knob holds, and the charge it is stopped at', () => {
    const plan = planOf(tokens());
    const { settings } = plan;
    if (settings?.control !== 'amps') throw new Error('amps expected');
    expect(targetOf(plan)).toEqual({
      amps: settings.amps,
      chargeAh: settings.stopCharge.value,
      minutes: settings.minutes.value,
      countsCharge: true,
    });
  });
  test('by volts: the figures, and without a meter the minutes', () => {
    const plan = planOf(cuff());
    expect(targetOf(plan)).toMatchObject({
      amps: figureOf(plan, 'current').value,
      chargeAh: figureOf(plan, 'charge').value,
      countsCharge: false,
    });
  });
  test('none goes by a plan that is refused', () => {
    const refused = planOf(pendant(), { 'bath.salt': 'NaCl' });
    expect(refused.settings).toBeNull();
    expect(targetOf(refused)).toBeNull();
    expect(watchRun(refused, run, [read(1, 9)])).toEqual({ departure: null, alarms: [] });
    expect(targetOf(null)).toBeNull();
  });
  test('its alarms are measured against the plan’s amps and the limits that every plan shares', () => {
    const plan = planOf(pendant());
    const amps = targetOf(plan)?.amps ?? NaN;
    const alarms = (reading: Partial<Reading>) =>
      watchRun(plan, run, [{ at: at(1), amps: null, volts: null, celsius: null, ...reading }]).alarms;
    expect(alarms({ amps })).toEqual([]);
    expect(alarms({ amps: 0.49 * amps })).toEqual(['amps-gone']);
    expect(alarms({ amps: 1.51 * amps })).toEqual(['amps-jumped']);
    expect(alarms({ celsius: limits.warnTemperature.value })).toEqual(['warm']);
    expect(alarms({ celsius: limits.stopTemperature.value })).toEqual(['stop-hot']);
    expect(alarms({ volts: limits.refusedVolts.value })).toEqual(['volts-high']);
  });
});

test('a plan that names a salt no longer known still alarms', () => {
  const plan = planOf(pendant());
  const old = { ...plan, job: { ...plan.job, bath: { ...plan.job.bath, salt: 'gone' as SaltId } } };
  expect(watchRun(old, run, [read(1, 0.4), read(6, 0.1)]).alarms).toEqual(['amps-gone']);
});

describe('depth by weight', () => {
  const plan = planOf(pendant());
  const mass = figureOf(plan, 'mass_removed').value;
  const depth = figureOf(plan, 'depth').value;

  test('is the planned depth at the planned loss, whatever the amps were', () => {
    const found = depthByWeight(plan, mass, 0.01);
    expect(found?.value).toBeCloseTo(depth, 6);
    expect(found?.low).toBeLessThan(depth);
    expect(found?.high).toBeGreaterThan(depth);
  });
  test('never exceeds the sheet', () => {
    expect(depthByWeight(plan, 1000 * mass, 0.01)?.value).toBeCloseTo(plan.job.piece.thickness * 1e6, 6);
  });
  test('is unknown without a loss or without a plan’s figures', () => {
    expect(depthByWeight(plan, 0, 0.01)).toBeNull();
    expect(depthByWeight({ ...plan, figures: {} }, 1, 0.01)).toBeNull();
  });
});
