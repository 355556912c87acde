import { learnt } from '../core/learn/bite-rate.ts';
import type { Learnt } from '../core/learn/bite-rate.ts';
import { learntCell } from '../core/learn/cell-line.ts';
import type { LearntCell } from '../core/learn/cell-line.ts';
import type { Way } from '../core/learn/rate.ts';
import { offsets, yieldPriors } from '../core/facts/electrode-facts.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { Anion } from '../core/facts/salts/salt-facts.ts';
import { RANGE_Z } from '../core/units/range.ts';
import { lentFor, ratesIn } from './bench-rates.ts';
import type { JobSummary } from './job-summary.ts';

/** One finished job in the group of its metal and salt. */
export interface Dot {
  readonly id: string;
  readonly title: string;
  /** ms since 1970 */
  readonly at: number;
  /** bite rate, as a share of Faraday's law */
  readonly rate: number;
  readonly way: Way;
  readonly isDoubted: boolean;
}

/** What the maker's jobs show about a metal and a salt, beside what the tables expect. */
export interface Lesson {
  readonly family: MetalFamily;
  readonly anion: Anion;
  readonly table: { readonly median: number; readonly low: number; readonly high: number };
  readonly learnt: Learnt;
  readonly cell: LearntCell | null;
  /** oldest first */
  readonly dots: readonly Dot[];
}

/** What the jobs show about every metal and salt, most jobs first. */
export function lessonsIn(summaries: readonly JobSummary[]): readonly Lesson[] {
  const byId = new Map(summaries.map((one) => [one.id, one]));
  const pairs = ratesIn(summaries, '');
  return [...pairs.values()]
    .flatMap(({ family, anion, rates, points }): Lesson[] => {
      if (rates.length === 0) return [];
      const { median, spread } = yieldPriors[family][anion];
      const taught = learnt(median.value, rates, lentFor(pairs, { family, anion }));
      if (!taught) return [];
      const dots = rates.map(({ id, rate, way }): Dot => {
        const from = byId.get(id);
        return {
          id,
          rate,
          way,
          title: from?.title ?? '',
          at: from?.touchedAt ?? 0,
          isDoubted: taught.doubted.includes(id),
        };
      });
      return [
        {
          family,
          anion,
          table: {
            median: median.value,
            low: median.value * Math.exp(-RANGE_Z * spread),
            high: median.value * Math.exp(RANGE_Z * spread),
          },
          learnt: taught,
          cell: learntCell(offsets[family][anion].spread, points),
          dots: dots.toSorted((a, b) => a.at - b.at),
        },
      ];
    })
    .toSorted((a, b) => b.dots.length - a.dots.length);
}
