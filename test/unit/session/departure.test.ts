import { expect, test } from 'vitest';
import type { Reading } from '../../../src/lib/notebook/records.ts';
import { departureIn } from '../../../src/lib/session/departure.ts';
import { departureTexts } from '../../../src/lib/words/en/departures.ts';
import { pendant, planOf, tokens } from '../../fixtures/jobs.ts';

const MINUTE = 60_000;
const run = { startedAt: 10 * MINUTE, stoppedAt: null, offAt: null };
const read = (minutes: number, amps: number, celsius: number | null = null): Reading => ({
  at: run.startedAt + minutes * MINUTE,
  amps,
  volts: null,
  celsius,
  note: '',
});

test('a run is measured against its own readings, with what came before it left out', () => {
  const plan = planOf(pendant());
  const earlier = { ...read(-5, 9), note: 'of the run before' };
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
    expect(change).toBe('For its volts the bath passes 80 % more than at first.');
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
