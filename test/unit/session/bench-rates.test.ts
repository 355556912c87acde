import { describe, expect, test } from 'vitest';
import type { JobRecord } from '../../../src/lib/notebook/records.ts';
import { learntFor, rateOf, ratesIn } from '../../../src/lib/session/bench-rates.ts';
import { benchText } from '../../../src/lib/words/bench.ts';
import { cuff, figureOf, pendant, planOf, tokens } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const meter = { 'supply.showsAmps': true };
const plan = planOf(pendant(), meter);
const charge = figureOf(plan, 'charge').value;
const planned = figureOf(plan, 'depth').working.inputs.find(({ id }) => id === 'yield')?.value ?? NaN;

/** A job that passed exactly the planned charge in twenty minutes. */
const done = (
  id: string,
  result: Partial<NonNullable<JobRecord['result']>>,
  change: Partial<JobRecord> = {},
) => {
  const amps = 3 * charge;
  return aJob(id, {
    planAtStart: plan,
    snapshot: {
      context: { runs: [{ startedAt: T0, stoppedAt: T0 + 20 * MINUTE, offAt: T0 + 20 * MINUTE }] },
    },
    readings: [0, 20].map((minutes) => ({
      at: T0 + minutes * MINUTE,
      amps,
      volts: null,
      celsius: null,
      note: '',
    })),
    result: { depthUm: null, massBeforeG: null, massAfterG: null, note: '', ...result },
    updatedAt: T0 + 30 * MINUTE,
    ...change,
  });
};

describe('the bite rate of a finished job', () => {
  test('is the planned one when it came out as planned', () => {
    const depth = figureOf(plan, 'depth').value;
    expect(rateOf(done('a', { depthUm: depth }))).toMatchObject({
      id: 'a',
      way: 'depth',
      rate: expect.closeTo(planned, 6) as number,
    });
    expect(rateOf(done('a', { depthUm: depth / 2 }))?.rate).toBeCloseTo(planned / 2, 6);
  });
  test('goes by weight where there is one, and weight is the surer', () => {
    const mass = figureOf(plan, 'mass_removed').value;
    const both = rateOf(done('a', { depthUm: 55, massBeforeG: 10, massAfterG: 10 - 0.8 * mass }));
    expect(both).toMatchObject({ way: 'mass', rate: expect.closeTo(0.8 * planned, 6) as number });
    const depth = rateOf(done('a', { depthUm: 55 }));
    expect(both?.off).toBeLessThan(depth?.off ?? 0);
  });
  test('is none without a run, a measurement, a count, or a known end', () => {
    expect(rateOf(done('a', {}))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { snapshot: null }))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { planAtStart: planOf(cuff()) }))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { planAtStart: null }))).toBeNull();
  });
});

describe('what the bench has taught', () => {
  const depth = figureOf(plan, 'depth').value;
  const jobs = ['a', 'b', 'c', 'd'].map((id, n) => done(id, { depthUm: depth * (0.68 + 0.02 * n) }));
  test('belongs to its metal and salt, and leaves out the job itself', () => {
    const rates = ratesIn(jobs, 'b');
    const { metal } = plan.job.piece;
    expect(learntFor(rates, metal, plan.job.bath.salt)?.jobs).toBe(3);
    expect(learntFor(rates, metal, 'KNO3')?.jobs).toBe(3);
    expect(learntFor(rates, 'C11000', plan.job.bath.salt)).toBeNull();
    expect(learntFor(rates, 'no metal', plan.job.bath.salt)).toBeNull();
  });
  test('moves the plan to where the bench is, and narrows its range', () => {
    const learnt = learntFor(ratesIn(jobs, ''), plan.job.piece.metal, plan.job.bath.salt);
    if (!learnt) throw new Error('nothing learnt');
    const { median, spread } = learnt;
    expect(median).toBeGreaterThan(0.68 * planned);
    expect(median).toBeLessThan(0.85 * planned);
    const taught = planOf(pendant(), { ...meter, bench: { biteRate: { median, spread, jobs: 4 } } });
    expect(figureOf(taught, 'charge').value / charge).toBeCloseTo(planned / median, 6);
    const input = figureOf(taught, 'charge').working.inputs.find(({ id }) => id === 'yield');
    expect(input).toMatchObject({ value: median, evidence: 'yourLog' });
    expect(benchText(learnt)).toMatch(/^Your bench, 4 jobs: it takes \d+\s?% of what the amp-hours could/);
  });
  test('is not spoilt by a record whose plan has another shape', () => {
    const odd = [
      {},
      7,
      'plan',
      { job: {} },
      { ...plan, figures: {} },
      { ...plan, figures: { depth: 3 } },
    ].map((planAtStart, n) => done(`odd${String(n)}`, { depthUm: 50 }, { planAtStart }));
    const rates = ratesIn([...odd, ...jobs], '');
    expect(learntFor(rates, plan.job.piece.metal, plan.job.bath.salt)?.jobs).toBe(4);
  });
  test('learns nothing from what cannot be, so that a slip of the pen locks no job', () => {
    const slips = [
      done('s1', { massBeforeG: 500, massAfterG: 1 }),
      done('s2', { depthUm: depth * 40 }),
      done('s3', { depthUm: depth / 90 }),
    ];
    const { metal } = plan.job.piece;
    expect(learntFor(ratesIn(slips, ''), metal, plan.job.bath.salt)).toBeNull();
    // at the very edge of what can be a plan still comes of it
    const edge = [0.06, 3.1, 0.06, 3.1].map((share, n) => done(`e${String(n)}`, { depthUm: depth * share }));
    const learnt = learntFor(ratesIn(edge, ''), metal, plan.job.bath.salt);
    if (!learnt) throw new Error('nothing learnt');
    const { median, spread, jobs: count } = learnt;
    expect(planOf(pendant(), { bench: { biteRate: { median, spread, jobs: count } } }).refusals).toEqual([]);
  });
  test('narrows the range with more jobs', () => {
    const range = (spread: number) => {
      const { low, high } = figureOf(
        planOf(pendant(), { ...meter, bench: { biteRate: { median: 0.9, spread, jobs: 9 } } }),
        'charge',
      );
      return high / low;
    };
    const many = Array.from({ length: 12 }, (_, n) => done(`j${String(n)}`, { depthUm: 0.9 * depth }));
    const few = learntFor(ratesIn(many.slice(0, 1), ''), plan.job.piece.metal, plan.job.bath.salt);
    const lots = learntFor(ratesIn(many, ''), plan.job.piece.metal, plan.job.bath.salt);
    expect(range(lots?.spread ?? NaN)).toBeLessThan(range(few?.spread ?? NaN));
  });
  test('is refused in a job file where it cannot be', () => {
    expect(() => planOf(tokens(), { bench: { biteRate: { median: 9, spread: 0.1, jobs: 2 } } })).toThrow(
      /bench\.biteRate\.median/,
    );
  });
});
