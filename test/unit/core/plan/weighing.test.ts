import { describe, expect, it } from 'vitest';
import { weighingFor } from '../../../../src/lib/core/plan/weighing.ts';

const ranged = (grams: number) => ({ grams, low: 0.953 * grams, high: 1.05 * grams });
const bath = { ...ranged(29.6), strength: 60, bathMl: 500 };

describe('weighing on the maker’s own scale', () => {
  it.each([
    [0.1, 29.6],
    [1, 30],
    [5, 30],
  ])('rounds to a step of %f g', (step, grams) => {
    expect(weighingFor(bath, step)).toEqual({ kind: 'weigh', grams });
  });

  it.each([
    ['no fine scale', 29.6, null],
    ['a scale that would be off by more than a tenth', 24, 5],
    ['a scale whose nearest step lies outside the range of the figure', 28.1, 5],
  ] as const)('makes a round stock of the same strength with %s', (_name, grams, step) => {
    const weighing = weighingFor({ ...bath, ...ranged(grams) }, step);
    expect(weighing).toMatchObject({ kind: 'pour', grams: 50, pourMl: 500 });
    // strength is salt over water, and jugs show 5 mL
    if (weighing.kind === 'pour') expect((1000 * weighing.grams) / weighing.waterMl).toBeCloseTo(60, 0);
  });

  it('never says a mass outside the range that stands beside it', () => {
    for (const step of [0.1, 1, 5])
      for (let grams = 5; grams < 200; grams += 0.37) {
        const wanted = { ...bath, ...ranged(grams) };
        const weighing = weighingFor(wanted, step);
        if (weighing.kind !== 'weigh') continue;
        expect(weighing.grams).toBeGreaterThanOrEqual(wanted.low);
        expect(weighing.grams).toBeLessThanOrEqual(wanted.high);
      }
    // less than a twentieth off, and still below the range
    expect(weighingFor({ ...bath, ...ranged(31.5) }, 5).kind).toBe('pour');
  });

  it('makes as much stock as the tub takes', () => {
    const weighing = weighingFor({ ...ranged(118), strength: 60, bathMl: 2000 }, null);
    expect(weighing).toMatchObject({ kind: 'pour', grams: 150, waterMl: 2500, pourMl: 2000 });
  });
});
