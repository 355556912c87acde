import { describe, expect, test } from 'vitest';
import { beliefAfter, learnt } from '../../src/lib/core/learn/bite-rate.ts';
import type { Rate } from '../../src/lib/core/learn/rate.ts';
import { meanOf, nextOf, quantileOf } from '../../src/lib/core/learn/mean.ts';
import type { Expectation } from '../../src/lib/core/learn/mean.ts';
import { learntCell } from '../../src/lib/core/learn/cell-line.ts';
import { lentBy } from '../../src/lib/core/learn/lent.ts';
import { normalQuantile } from '../../src/lib/core/units/sample.ts';
import { studentBelow } from '../../src/lib/core/learn/student.ts';
import { uniforms } from '../fixtures/simulated-runs.ts';

/** The belief before any job, as `core/learn/bite-rate.ts` states it. */
const first = { m: Math.log(0.95), kappa: 1.2, a: 1.5, b: 0.009 };

function chances(seed: number) {
  const random = uniforms(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
  /** Marsaglia and Tsang's way to a gamma of shape 1 or more */
  const gamma = (shape: number): number => {
    const d = shape - 1 / 3;
    for (;;) {
      const x = normal();
      const v = (1 + x / Math.sqrt(9 * d)) ** 3;
      if (v > 0 && Math.log(random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  /** a bench drawn from what is believed at first */
  const bench = () => {
    const sigma = Math.sqrt(first.b / gamma(first.a));
    return { mu: first.m + (sigma / Math.sqrt(first.kappa)) * normal(), sigma };
  };
  return { random, normal, bench };
}
const isWithin = (value: number, expected: Expectation): boolean =>
  value > quantileOf(expected, 0.05) && value < quantileOf(expected, 0.95);
const rateOf = (log: number): Rate => ({ id: '', rate: Math.exp(log), way: 'mass', off: 0 });
const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;

describe('what is believed, calibrated by simulation (Talts et al. 2018)', () => {
  /** Squares of twenty bins that should be alike, over what each should hold. */
  const unevenness = (shares: readonly number[]): number => {
    const bins = new Array<number>(20).fill(0);
    for (const share of shares) {
      const n = Math.min(19, Math.floor(20 * share));
      bins[n] = (bins[n] as number) + 1;
    }
    const each = shares.length / 20;
    return bins.reduce((sum, one) => sum + (one - each) ** 2 / each, 0);
  };
  const place = (value: number, { freedom, location, scale }: Expectation): number =>
    studentBelow((value - location) / scale, freedom);
  const LOOPS = 2000;
  const ranks = (next: (belief: typeof first) => Expectation) => {
    const { random, normal, bench } = chances(11);
    return Array.from({ length: LOOPS }, () => {
      const { mu, sigma } = bench();
      const jobs = 1 + Math.floor(8 * random());
      const after = beliefAfter(
        0.95,
        Array.from({ length: jobs }, () => rateOf(mu + sigma * normal())),
      );
      return { mean: place(mu, meanOf(after)), next: place(mu + sigma * normal(), next(after)) };
    });
  };
  test('mean and next job fall evenly into what was expected of them (99 % limit 36.2)', () => {
    const all = ranks(nextOf);
    expect(unevenness(all.map(({ mean }) => mean))).toBeLessThan(36.2);
    expect(unevenness(all.map(({ next }) => next))).toBeLessThan(36.2);
    const inside = all.filter(({ next }) => next > 0.05 && next < 0.95).length / LOOPS;
    expect(Math.abs(inside - 0.9)).toBeLessThan(0.018);
  });
  test('a scale without its (κ + 1)/κ is found out', () => {
    expect(unevenness(ranks(meanOf).map(({ next }) => next))).toBeGreaterThan(36.2);
  });
});

describe('a thousand benches', () => {
  const BENCHES = 1000;
  const counts = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  test.each(counts)(
    'drawn from what is stated: the next job lies in the 90 %% range, after %i jobs',
    (jobs) => {
      const { normal, bench } = chances(100 + jobs);
      const N = 4 * BENCHES;
      const inside = Array.from({ length: N }, () => {
        const { mu, sigma } = bench();
        const draw = () => mu + sigma * normal();
        const after = beliefAfter(
          0.95,
          Array.from({ length: jobs }, () => rateOf(draw())),
        );
        return isWithin(draw(), nextOf(after));
      }).filter(Boolean).length;
      expect(inside / N).toBeGreaterThanOrEqual(0.87);
      expect(inside / N).toBeLessThanOrEqual(0.93);
    },
  );
  test.each([
    [3, 0.04],
    [8, 0.025],
  ])('with a scatter of 10 %%: the rate is learnt after %i jobs, within %f (median)', (jobs, most) => {
    const { normal } = chances(jobs);
    const off = Array.from({ length: BENCHES }, () => {
      const mu = first.m + 0.1 * normal();
      const rates = Array.from({ length: jobs }, () => rateOf(mu + 0.1 * normal()));
      return Math.abs((learnt(0.95, rates)?.median ?? NaN) / Math.exp(mu) - 1);
    });
    expect(median(off)).toBeLessThanOrEqual(most);
  });
  test.each([2, 3, 4, 6, 8, 10])(
    'that break the model, twice the scatter and one job in eight half as fast again: 70 %% after %i jobs',
    (jobs) => {
      const { random, normal } = chances(7 * jobs);
      const inside = Array.from({ length: BENCHES }, () => {
        const mu = first.m + 0.1 * normal();
        const draw = () => mu + 0.2 * normal() + (random() < 1 / 8 ? Math.log(1.5) : 0);
        const after = beliefAfter(
          0.95,
          Array.from({ length: jobs }, () => rateOf(draw())),
        );
        return isWithin(draw(), nextOf(after));
      }).filter(Boolean).length;
      expect(inside / BENCHES).toBeGreaterThanOrEqual(0.7);
    },
  );
});

describe('a bench that learns', () => {
  const rate = (value: number, off = 0, id = String(value)): Rate => ({ id, rate: value, way: 'mass', off });
  test('knows nothing before its first job, and narrows with each', () => {
    expect(learnt(0.95, [])).toBeNull();
    const [one, eight] = [1, 8].map((jobs) =>
      learnt(
        0.95,
        Array.from({ length: jobs }, () => rate(0.8)),
      ),
    );
    expect(eight?.spread).toBeLessThan(one?.spread ?? 0);
    expect(eight?.median).toBeCloseTo(0.8, 1);
    expect(one?.median).toBeGreaterThan(eight?.median ?? 1);
  });
  test('lets a sure measurement count more than a doubtful one', () => {
    const sure = learnt(0.95, [rate(0.8, 0.01)])?.median ?? NaN;
    const doubtful = learnt(0.95, [rate(0.8, 0.3)])?.median ?? NaN;
    expect(sure).toBeLessThan(doubtful);
    expect(doubtful).toBeLessThan(0.95);
  });
  test('asks about a job that the others would not have expected, and does not swallow it', () => {
    const rates = [0.9, 0.92, 0.88, 0.91, 0.9, 0.89, 2.5].map((value) => rate(value));
    expect(learnt(0.95, rates)?.doubted).toEqual(['2.5']);
    expect(learnt(0.95, rates)?.jobs).toBe(7);
    expect(learnt(0.95, rates.slice(0, 6))?.doubted).toEqual([]);
  });
  test('is the same in any order', () => {
    const rates = [rate(0.9, 0.02), rate(0.7, 0.2), rate(1.1, 0.05), rate(0.95)];
    const [one, other] = [learnt(0.95, rates), learnt(0.95, rates.toReversed())];
    expect(one?.median).toBeCloseTo(other?.median ?? NaN, 12);
    expect(one?.spread).toBeCloseTo(other?.spread ?? NaN, 12);
  });
});

describe('volts and amps of a thousand benches drawn from the prior', () => {
  /** A bench: V over the table's offset, and resistance over the modelled one, with its own scatter. */
  const OFFSET = 0.3;
  const bench = (random: () => number) => {
    const normal = (): number => normalQuantile(random());
    const sigma = 0.15;
    return { over: OFFSET * normal(), slope: Math.max(0.3, 1 + 0.35 * normal()), sigma, normal };
  };
  const volts = (count: number) => {
    const random = uniforms(77 + count);
    let inside = 0;
    const errors: number[] = [];
    for (let n = 0; n < 1000; n += 1) {
      const { over, slope, sigma, normal } = bench(random);
      const at = (modelled: number): number => over + slope * modelled + sigma * normal();
      const points = Array.from({ length: count }, () => {
        const modelled = 1 + 4 * random();
        return { modelled, over: at(modelled) };
      });
      const learnt = learntCell(OFFSET, points);
      const modelled = 1 + 4 * random();
      const [middle, spread] = learnt
        ? [
            learnt.over + learnt.slope * (modelled - learnt.pivot),
            Math.hypot(learnt.overSpread, learnt.slopeSpread * (modelled - learnt.pivot)),
          ]
        : [modelled, Math.hypot(OFFSET, 0.35 * modelled, sigma)];
      errors.push(Math.abs(middle - over - slope * modelled));
      if (Math.abs(at(modelled) - middle) <= 1.645 * spread) inside += 1;
    }
    return { coverage: inside / 1000, error: errors.toSorted((a, b) => a - b)[500] ?? NaN };
  };
  test.each([0, 1, 2, 4, 8])(
    'with %i settings noted the 90 %% range holds 84 to 97 %% of the next',
    (count) => {
      const { coverage } = volts(count);
      expect(coverage).toBeGreaterThan(0.84);
      expect(coverage).toBeLessThan(0.97);
    },
  );
  test('and the more are noted the nearer it comes', () => {
    const errors = [0, 2, 4, 8].map((count) => volts(count).error);
    console.log(
      `median error after 0, 2, 4, 8 settings: ${errors.map((one) => one.toFixed(2)).join(', ')} V`,
    );
    errors.slice(1).forEach((error, n) => {
      expect(error).toBeLessThan(errors[n] ?? 0);
    });
    expect(errors[3]).toBeLessThan(0.1);
  });
});

describe('metals that lend each other', () => {
  const random = uniforms(5);
  const normal = (): number => normalQuantile(random());
  /** Error of the first job of a new metal, with what others lend and without, on benches with a common bent. */
  const errorsWith = (common: number) => {
    const errors = { alone: [] as number[], lent: [] as number[] };
    for (let n = 0; n < 1000; n += 1) {
      const bent = common * normal();
      const metal = (): number => bent + 0.05 * normal();
      const rates = (own: number, count: number) =>
        Array.from({ length: count }, (_, k) => ({
          id: String(k),
          way: 'mass' as const,
          rate: 0.9 * Math.exp(own + 0.1 * normal()),
          off: 0,
        }));
      const others = [metal(), metal()].map((own) => ({ table: 0.9, rates: rates(own, 3) }));
      const truth = metal();
      const lent = lentBy(others)?.mean ?? 0;
      errors.alone.push(Math.abs(truth));
      errors.lent.push(Math.abs(truth - lent));
    }
    const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
    return { alone: mean(errors.alone), lent: mean(errors.lent) };
  };
  test('a bench with a bent of its own is foreseen better, one without hardly worse', () => {
    const bent = errorsWith(0.15);
    const straight = errorsWith(0);
    console.log(
      `error of a new metal: ${(100 * bent.alone).toFixed(1)} % alone, ${(100 * bent.lent).toFixed(1)} % with others; without a bent ${(100 * straight.alone).toFixed(1)} and ${(100 * straight.lent).toFixed(1)} %`,
    );
    expect(bent.lent).toBeLessThan(0.65 * bent.alone);
    expect(straight.lent - straight.alone).toBeLessThan(0.015);
  });
});
