import { describe, expect, test } from 'vitest';
import { worth } from '../../../src/lib/core/learn/rate.ts';
import type { JobRecord } from '../../../src/lib/notebook/records.ts';
import { cellFor, learntFor, ratesIn } from '../../../src/lib/session/bench-rates.ts';
import { shownBy } from '../../../src/lib/session/rate-of.ts';
import { scaleStep } from '../../../src/lib/session/scale-step.ts';
import { summaryOf } from '../../../src/lib/session/job-summary.ts';
import { benchText, cellText } from '../../../src/lib/words/en/learnt.ts';
import { cuff, figureOf, pendant, planOf, tokens } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;
const meter = { 'supply.showsAmps': true };
const plan = planOf(pendant(), meter);
const charge = figureOf(plan, 'charge').value;
const planned =
  figureOf(plan, 'depth').working.inputs.find(({ id }) => id === 'currentEfficiency')?.value ?? NaN;

const rateOf = (record: JobRecord) => shownBy(record).rate;

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
  test('goes by looks where nothing was measured, and looks are worth a tenth of a job', () => {
    const wanted = plan.job.piece.depth * 1e6;
    const depth = figureOf(plan, 'depth').value;
    const seen = (looks: string) => rateOf(done('a', { seen: { depth: looks } }));
    expect(seen('wanted')).toMatchObject({
      way: 'looks',
      rate: expect.closeTo((planned * wanted) / depth, 6) as number,
    });
    expect(seen('shallower')?.rate).toBeLessThan(seen('deeper')?.rate ?? 0);
    expect(worth(seen('wanted') ?? { id: '', way: 'looks', rate: 1, off: 0 })).toBeCloseTo(0.1, 6);
    // a gauge, and even a tab snapped through, is heard before the eye
    const tab = rateOf(done('a', { depthUm: 60, depthBy: 'tab', seen: { depth: 'deeper' } }));
    expect(tab).toMatchObject({ way: 'depth', off: 0.5 });
    expect(rateOf(done('a', { depthUm: 60 }))?.off).toBeCloseTo(1 / 6, 6);
  });
  test('counts a coarse scale for what it is', () => {
    const weighed = (scale: string, massBeforeG: number, massAfterG: number) =>
      rateOf(done('a', { depthUm: 55, massBeforeG, massAfterG }, { draft: { scale } }))?.way;
    expect(weighed('0.01', 10.2, 9.7)).toBe('mass');
    // the digits typed tell a finer scale than the one the salt was weighed on
    expect(weighed('1', 11, 10.5)).toBe('mass');
    // no loss on a scale of whole grams: the gauge is heard
    expect(weighed('1', 11, 11)).toBe('depth');
    expect(scaleStep('1', [11, 10])).toBe(1);
    expect(scaleStep('1', [10.25, 9.7])).toBeCloseTo(0.01, 12);
    expect(scaleStep('0,1', [11, 10])).toBe(0.1);
    expect(scaleStep('none', [null, null])).toBe(1);
  });
  test('is none without a run, a measurement, a count, or a known end', () => {
    expect(rateOf(done('a', {}))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { snapshot: null }))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { planAtStart: planOf(cuff()) }))).toBeNull();
    expect(rateOf(done('a', { depthUm: 50 }, { planAtStart: null }))).toBeNull();
  });
});

const heard = (records: readonly JobRecord[], except: string) => ratesIn(records.map(summaryOf), except);

describe('what the bench has taught', () => {
  const depth = figureOf(plan, 'depth').value;
  const jobs = ['a', 'b', 'c', 'd'].map((id, n) => done(id, { depthUm: depth * (0.68 + 0.02 * n) }));
  test('belongs to its metal and salt, and leaves out the job itself', () => {
    const rates = heard(jobs, 'b');
    const { metal } = plan.job.piece;
    expect(learntFor(rates, metal, plan.job.bath.salt)?.jobs).toBe(3);
    expect(learntFor(rates, metal, 'KNO3')?.jobs).toBe(3);
    expect(learntFor(rates, 'C11000', plan.job.bath.salt)?.jobs).toBe(0);
    expect(learntFor(rates, 'no metal', plan.job.bath.salt)).toBeNull();
  });
  test('moves the plan to where the bench is, and narrows its range', () => {
    const learnt = learntFor(heard(jobs, ''), plan.job.piece.metal, plan.job.bath.salt);
    if (!learnt) throw new Error('nothing learnt');
    const { median, spread } = learnt;
    expect(median).toBeGreaterThan(0.68 * planned);
    expect(median).toBeLessThan(0.85 * planned);
    const taught = planOf(pendant(), { ...meter, bench: { biteRate: { median, spread, jobs: 4 } } });
    expect(figureOf(taught, 'charge').value / charge).toBeCloseTo(planned / median, 6);
    const input = figureOf(taught, 'charge').working.inputs.find(({ id }) => id === 'currentEfficiency');
    expect(input).toMatchObject({ value: median, evidence: 'yourLog' });
    expect(benchText(learnt)).toMatch(
      /^From 4 of your jobs: the current takes \d+\s?% of what the amp-hours could/,
    );
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
    const rates = heard([...odd, ...jobs], '');
    expect(learntFor(rates, plan.job.piece.metal, plan.job.bath.salt)?.jobs).toBe(4);
  });
  test('learns nothing from what cannot be, so that a slip of the pen locks no job', () => {
    const slips = [
      done('s1', { massBeforeG: 500, massAfterG: 1 }),
      done('s2', { depthUm: depth * 40 }),
      done('s3', { depthUm: depth / 90 }),
    ];
    const { metal } = plan.job.piece;
    expect(learntFor(heard(slips, ''), metal, plan.job.bath.salt)).toBeNull();
    // at the very edge of what can be a plan still comes of it
    const edge = [0.06, 3.1, 0.06, 3.1].map((share, n) => done(`e${String(n)}`, { depthUm: depth * share }));
    const learnt = learntFor(heard(edge, ''), metal, plan.job.bath.salt);
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
    const few = learntFor(heard(many.slice(0, 1), ''), plan.job.piece.metal, plan.job.bath.salt);
    const lots = learntFor(heard(many, ''), plan.job.piece.metal, plan.job.bath.salt);
    expect(range(lots?.spread ?? NaN)).toBeLessThan(range(few?.spread ?? NaN));
  });
  test('is refused in a job file where it cannot be', () => {
    expect(() => planOf(tokens(), { bench: { biteRate: { median: 9, spread: 0.1, jobs: 2 } } })).toThrow(
      /bench\.biteRate\.median/,
    );
  });
});

describe('volts and amps', () => {
  const { metal } = plan.job.piece;
  const { salt } = plan.job.bath;
  const current = figureOf(plan, 'current').value;
  const volts = figureOf(plan, 'volts').value;
  /** A bench whose cell passes this share of the planned current at some volts. */
  const slow = (id: string, share: number, more = 0) => {
    const offset =
      figureOf(plan, 'current').working.inputs.find(({ id: name }) => name === 'thresholdVoltage')?.value ??
      NaN;
    const amps = (share * current * (volts + more - offset)) / (volts - offset);
    return done(
      id,
      {},
      {
        readings: [0, 5, 20].map((minutes) => ({
          at: T0 + minutes * MINUTE,
          amps,
          volts: volts + more,
          celsius: null,
          note: '',
        })),
      },
    );
  };
  test('teach the cell: a bench that passes two thirds is planned with about two thirds', () => {
    const jobs = [0, 1.2, 2.4, 0.6, 1.8, 0, 1.2, 2.4].map((more, n) => slow(`s${String(n)}`, 2 / 3, more));
    const cell = cellFor(heard(jobs, ''), metal, salt);
    if (!cell) throw new Error('nothing learnt');
    expect(cell.points).toBe(8);
    expect(cell.slope).toBeGreaterThan(1.35);
    expect(cell.slope).toBeLessThan(1.55);
    const taught = planOf(pendant(), { ...meter, bench: { cell: { ...cell } } });
    const after = figureOf(taught, 'current');
    expect(after.value / current).toBeGreaterThan(0.62);
    expect(after.value / current).toBeLessThan(0.72);
    const before = figureOf(plan, 'current');
    expect(after.high / after.low).toBeLessThan(before.high / before.low);
    expect(after.working.inputs.find(({ id }) => id === 'slowness')?.evidence).toBe('yourLog');
    expect(cellText(cell)).toMatch(/^Volts and amps, noted at 8 settings: /);
    // the depth goes by amp-hours, and stays where it was
    expect(figureOf(taught, 'charge').value).toBeCloseTo(charge, 9);
  });
  test('leave the plan where it is on a bench that is as modelled', () => {
    const jobs = [0, 1, 2, 3].map((more) => slow(`s${String(more)}`, 1, more));
    const cell = cellFor(heard(jobs, ''), metal, salt);
    const taught = planOf(pendant(), { ...meter, bench: { cell: { ...cell } } });
    expect(figureOf(taught, 'current').value / current).toBeCloseTo(1, 2);
  });
  test('teach nothing where they cannot be, or were not both noted', () => {
    expect(cellFor(heard([done('a', {})], ''), metal, salt)).toBeNull();
    expect(cellFor(heard([slow('mA', 1000)], ''), metal, salt)).toBeNull();
    expect(cellFor(heard([slow('a', 1)], ''), 'C11000', salt)).toBeNull();
  });
});

describe('metals that lend each other', () => {
  const depth = figureOf(plan, 'depth').value;
  const low = ['a', 'b', 'c', 'd'].map((id) => done(id, { depthUm: 0.7 * depth }));
  test('let a first job of another metal expect a little less where all bite less', () => {
    const alone = learntFor(heard([], ''), 'C11000', plan.job.bath.salt);
    expect(alone).toBeNull();
    const lent = learntFor(heard(low, ''), 'C11000', plan.job.bath.salt);
    expect(lent).toMatchObject({ jobs: 0, lent: 4 });
    const table = figureOf(planOf(pendant(), { ...meter, 'piece.metal': 'C11000' }), 'charge').working.inputs;
    const usual = table.find(({ id }) => id === 'currentEfficiency')?.value ?? NaN;
    expect((lent?.median ?? 0) / usual).toBeGreaterThan(0.8);
    expect((lent?.median ?? 0) / usual).toBeLessThan(0.97);
    expect(benchText(lent ?? { jobs: 0, lent: 0, median: 0, low: 0, high: 0 })).toMatch(
      /^From 4 jobs with other metals or salts: /,
    );
  });
  test('say nothing from two jobs', () => {
    expect(learntFor(heard(low.slice(0, 2), ''), 'C11000', plan.job.bath.salt)).toBeNull();
  });
});
