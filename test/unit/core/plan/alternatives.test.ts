import { describe, expect, test } from 'vitest';
import { rememberingSolver } from '../../../../src/lib/core/cell/solved-field.ts';
import { planAsProposed } from '../../../../src/lib/core/plan/plan-job.ts';
import { alternativesFor } from '../../../../src/lib/core/plan/questions.ts';
import { defaultReadingUnits } from '../../../../src/lib/core/job/reading-units.ts';
import { alternativeText } from '../../../../src/lib/words/en/alternatives.ts';
import { amount, cuff, jobOf, patched, pendant } from '../../../fixtures/jobs.ts';

const solve = rememberingSolver();
const job = jobOf(pendant());
const [gentler, quicker] = alternativesFor(job, solve);
const minutes = planAsProposed(job, solve).settings?.minutes.value ?? NaN;

describe('other ways to the same depth', () => {
  test('gentler takes longer, with fewer amps, and is no less even', () => {
    expect(gentler?.id).toBe('gentler');
    expect(gentler?.minutes).toBeGreaterThan(1.5 * minutes);
    expect(gentler?.evenness?.then).toBeGreaterThanOrEqual(gentler?.evenness?.now ?? Infinity);
  });
  test('quicker takes less, and stays below the limit of the film and of the supply', () => {
    expect(quicker?.id).toBe('quicker');
    expect(quicker?.minutes).toBeLessThan(minutes / 1.15);
    const weak = jobOf(patched(pendant(), { 'supply.maxAmps': amount(0.4, 'A') }));
    expect(alternativesFor(weak, solve).map(({ id }) => id)).not.toContain('quicker');
  });
  test('an adapter, which has no knobs, is offered a wider gap and what it would do', () => {
    const adapter = jobOf(
      patched(pendant(), {
        'supply.kind': 'adapter',
        'supply.showsAmps': false,
        'supply.maxAmps': undefined,
      }),
    );
    const [way] = alternativesFor(adapter, solve);
    expect(way).toMatchObject({ id: 'gentler', control: 'volts', setting: 7 });
    expect(way?.gap).toBeGreaterThan(adapter.cathode.gap * 1e3);
    expect(way?.minutes).toBeGreaterThan(
      1.15 * (planAsProposed(adapter, solve).settings?.minutes.value ?? NaN),
    );
  });
  test('without a solved cell say nothing of evenness', () => {
    for (const way of alternativesFor(job)) expect(way.evenness).toBeNull();
  });
  test('are none for a refused job, nor before the bare area is known', () => {
    expect(alternativesFor(jobOf(patched(pendant(), { 'bath.salt': 'NaCl' })), solve)).toEqual([]);
    const later = { ...job, piece: { ...job.piece, openArea: null } };
    expect(alternativesFor(later, solve)).toEqual([]);
  });
  test('an adapter gives what it gives: only the gap can change', () => {
    const ways = alternativesFor(jobOf(patched(cuff(), { 'supply.kind': 'adapter' })), solve);
    for (const way of ways) expect(way.control).toBe('volts');
  });
  test('are told in four sentences at most', () => {
    for (const way of [gentler, quicker])
      if (way)
        expect(
          alternativeText(way, defaultReadingUnits)
            .split(/\. |\.$/)
            .filter(Boolean).length,
        ).toBeLessThanOrEqual(4);
  });
});
