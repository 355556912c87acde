import { describe, expect, test } from 'vitest';
import { practicePace } from '../../../src/lib/core/facts/practice-pace.ts';
import { FIRST_PACE, learnt } from '../../../src/lib/core/learn/bite-rate.ts';
import type { Rate } from '../../../src/lib/core/learn/rate.ts';
import { byTheClock } from '../../../src/lib/core/plan/run-by-plan.ts';
import type { JobRecord } from '../../../src/lib/notebook/records.ts';
import { paceFor, ratesIn } from '../../../src/lib/session/bench-rates.ts';
import { summaryOf } from '../../../src/lib/session/job-summary.ts';
import { shownBy } from '../../../src/lib/session/rate-of.ts';
import { benchTexts, paceText } from '../../../src/lib/words/en/learnt.ts';
import { cuff, figureOf, jobOf, patched, pendant, planOf } from '../../fixtures/jobs.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
/** Sterling at 7 V in sodium nitrate, and nothing there that shows amps. */
const blind = { 'supply.showsAmps': false, 'supply.maxAmps': undefined };
const plan = planOf(pendant(), blind);
const minutesByTables = (of: typeof plan): number | null => byTheClock(of)?.tables ?? null;
const minutesOf = (of: typeof plan): number => figureOf(of, 'run_time').value;
const wanted = figureOf(plan, 'depth').value;

/** A job bitten for so many minutes, and measured. */
const done = (id: string, minutes: number, result: Partial<NonNullable<JobRecord['result']>>): JobRecord =>
  aJob(id, {
    planAtStart: plan,
    snapshot: {
      context: {
        runs: [{ startedAt: T0, stoppedAt: T0 + minutes * MINUTE, offAt: T0 + minutes * MINUTE }],
      },
    },
    readings: [],
    result: { depthUm: null, massBeforeG: null, massAfterG: null, note: '', ...result },
    updatedAt: T0 + 90 * MINUTE,
  });

describe('common practice, no source: a bite by the clock', () => {
  test('silver in sodium nitrate at 7 V takes 15 to 30 min, and the tables alone are told', () => {
    expect(minutesOf(plan)).toBeGreaterThan(15);
    expect(minutesOf(plan)).toBeLessThan(30);
    expect(minutesByTables(plan)).toBeCloseTo(minutesOf(planOf(pendant())), 0);
    expect(plan.cautions.map(({ rule }) => rule)).not.toContain('bite-slower-in-practice');
  });
  test('copper in salt water at 5 V takes about 15 min', () => {
    const copper = planOf(pendant(), {
      ...blind,
      'piece.metal': 'C11000',
      'cathode.metal': 'C11000',
      'bath.salt': 'NaCl',
      'bath.strength.value': 50,
      'supply.volts.value': 5,
    });
    expect(minutesOf(copper)).toBeGreaterThan(10);
    expect(minutesOf(copper)).toBeLessThan(22);
  });
  test('a small piece at high volts is not planned far below the trade, and its range holds tables and trade', () => {
    const small = planOf(cuff(), {
      ...blind,
      'supply.volts.value': 9,
      'piece.openArea': { value: 1, unit: 'cm2' },
      'piece.openShare': undefined,
      'piece.depth': { value: 0.15, unit: 'mm' },
    });
    const { value, low, high } = figureOf(small, 'run_time');
    expect(low).toBeLessThanOrEqual((minutesByTables(small) ?? NaN) * 1.1);
    // 15 min for a tenth of a millimetre
    expect(high).toBeGreaterThan(22);
    expect(value).toBeGreaterThan(2 * (minutesByTables(small) ?? NaN));
  });
  test('is told to stand between tables and trade, or to be a guess where the trade says nothing', () => {
    const { tables, trade } = byTheClock(plan) ?? { tables: NaN, trade: NaN };
    expect(trade).toBeCloseTo(Math.sqrt(15 * 30), 6);
    expect(benchTexts.byTrade({ tables, trade })).toMatch(
      /between the tables, 4\.[89].min .* the trade takes, 21.min/,
    );
    const unknown = planOf(pendant(), { ...blind, 'piece.metal': 'C11000', 'cathode.metal': 'C11000' });
    expect(byTheClock(unknown)?.trade).toBeNull();
    expect(benchTexts.byTrade({ tables: 5, trade: null })).toContain('our own guess');
  });
  test('with an ammeter the tables stand: charge is counted', () => {
    const metered = planOf(pendant());
    expect(minutesByTables(metered)).toBeNull();
    const slowness = figureOf(metered, 'current').working.inputs.find(({ id }) => id === 'slowness');
    expect(slowness?.value).toBe(1);
  });
  test('what a supply must stand is what clean metal takes at first', () => {
    expect(figureOf(plan, 'current').value).toBeLessThan(0.5 * figureOf(planOf(pendant()), 'current').value);
    const asked = planOf(cuff(), { 'supply.maxAmps.value': 0.2 });
    expect(asked.cautions.map(({ rule }) => rule)).toContain('overloads-supply');
  });
});

describe('a job without an ammeter', () => {
  test('shows its pace by weight, gauge and eye, and no bite rate', () => {
    const half = shownBy(done('a', minutesOf(plan), { depthUm: wanted / 2 }));
    const planned =
      figureOf(plan, 'current').working.inputs.find(({ id }) => id === 'slowness')?.value ?? NaN;
    expect(half.rate).toBeNull();
    expect(half.pace).toMatchObject({ way: 'depth' });
    expect(half.pace?.rate).toBeCloseTo(planned / 2, 6);
    // half the time to the whole depth: twice as fast
    expect(shownBy(done('b', minutesOf(plan) / 2, { depthUm: wanted })).pace?.rate).toBeCloseTo(
      planned * 2,
      6,
    );
    expect(shownBy(done('c', minutesOf(plan), { seen: { depth: 'wanted' } })).pace).toMatchObject({
      way: 'looks',
    });
  });

  test('moves the next plan to what it showed', () => {
    const slow = [0, 1, 2].map((n) => summaryOf(done(String(n), minutesOf(plan), { depthUm: wanted / 2 })));
    const pace = paceFor(ratesIn(slow, 'next'), 'sterling-925', 'NaNO3');
    expect(pace?.jobs).toBe(3);
    const next = planJob({
      ...jobOf(patched(pendant(), blind)),
      bench: {
        biteRate: null,
        cell: null,
        pace: pace && { median: pace.median, spread: pace.spread, jobs: 3 },
      },
    });
    expect(minutesOf(next) / minutesOf(plan)).toBeGreaterThan(1.85);
    expect(minutesOf(next) / minutesOf(plan)).toBeLessThan(2.1);
    expect(pace && paceText(pace)).toMatch(/^From 3 of your jobs: they take [89]\.\d times/);
  });
});

/** Noise of a measurement and of the bench itself, alike in every run of this file. */
function noise(seed: number): () => number {
  let state = seed;
  const even = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

describe('six jobs on benches that nobody has told of', () => {
  const table = 1 / practicePace('silver', 'nitrate').median.value;
  const tables = minutesByTables(plan) ?? NaN;
  /** @param truth minutes that this bench takes */
  const sixth = (truth: number, by: { way: Rate['way']; off: number }, seed: number): number => {
    const normal = noise(seed);
    const rates: Rate[] = [];
    for (let job = 0; job < 5; job += 1) {
      const off = Math.hypot(by.off, 0.1) * normal();
      rates.push({ id: String(job), rate: (tables / truth) * Math.exp(off), ...by });
    }
    return tables / (learnt(table, rates, null, FIRST_PACE)?.median ?? NaN);
  };
  const medianError = (truth: number, by: { way: Rate['way']; off: number }): number => {
    const errors = Array.from({ length: 101 }, (_, seed) => Math.abs(sixth(truth, by, seed + 1) / truth - 1));
    return errors.toSorted((a, b) => a - b)[50] ?? NaN;
  };
  test.each([60, 15, 5, 100])('by weight or gauge the sixth is planned within 12 %% of %d min', (truth) => {
    expect(medianError(truth, { way: 'depth', off: 0.1 })).toBeLessThan(0.12);
  });
  test.each([60, 15])('by eye within 25 %% of %d min', (truth) => {
    expect(medianError(truth, { way: 'looks', off: 0.3 })).toBeLessThan(0.25);
  });

  test('jobs that agree narrow the range every time; five of them to 15 %', () => {
    const width = (jobs: number, at: number): number => {
      const one: Rate = { id: 'a', rate: at, way: 'mass', off: 0.02 };
      const known = learnt(
        table,
        Array.from({ length: jobs }, () => one),
        null,
        FIRST_PACE,
      );
      return Math.log((known?.high ?? NaN) / (known?.low ?? NaN)) / 2;
    };
    for (const at of [table, 1])
      for (let jobs = 2; jobs <= 8; jobs += 1) expect(width(jobs, at)).toBeLessThan(width(jobs - 1, at));
    expect(width(5, table)).toBeLessThan(0.15);
  });
});
