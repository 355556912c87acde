import { learnt } from '../core/learn/bite-rate.ts';
import type { Learnt, Way } from '../core/learn/bite-rate.ts';
import { yieldPriors } from '../core/facts/electrode-facts.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { Anion } from '../core/facts/salts/salt-facts.ts';
import type { JobRecord } from '../notebook/records.ts';
import { ratesIn } from './bench-rates.ts';

/** Normal quantile of 95 %. */
const Z95 = 1.645;

/** One finished job among those of its metal and salt. */
export interface Dot {
  readonly id: string;
  readonly title: string;
  /** ms since 1970 */
  readonly at: number;
  /** of what Faraday's law gives */
  readonly rate: number;
  readonly way: Way;
  readonly isDoubted: boolean;
}

/** What a metal and a salt have shown on this bench, beside what the tables expect. */
export interface Lesson {
  readonly family: MetalFamily;
  readonly anion: Anion;
  readonly table: { readonly median: number; readonly low: number; readonly high: number };
  readonly learnt: Learnt;
  /** oldest first */
  readonly dots: readonly Dot[];
}

/** Everything that the bench has taught, most jobs first. */
export function lessonsIn(records: readonly JobRecord[]): readonly Lesson[] {
  const byId = new Map(records.map((record) => [record.id, record]));
  return [...ratesIn(records, '')]
    .flatMap(([, { family, anion, rates }]): Lesson[] => {
      const { median, spread } = yieldPriors[family][anion];
      const taught = learnt(median.value, rates);
      if (!taught) return [];
      const dots = rates.map(({ id, rate, way }): Dot => {
        const record = byId.get(id);
        return {
          id,
          rate,
          way,
          title: record?.draft['title'] ?? '',
          at: record?.updatedAt ?? 0,
          isDoubted: taught.doubted.includes(id),
        };
      });
      return [
        {
          family,
          anion,
          table: {
            median: median.value,
            low: median.value * Math.exp(-Z95 * spread),
            high: median.value * Math.exp(Z95 * spread),
          },
          learnt: taught,
          dots: dots.toSorted((a, b) => a.at - b.at),
        },
      ];
    })
    .toSorted((a, b) => b.dots.length - a.dots.length);
}
