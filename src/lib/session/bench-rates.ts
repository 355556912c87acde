import { offsets, yieldPriors } from '../core/facts/electrode-facts.ts';
import { practicePace } from '../core/facts/practice-pace.ts';
import { FIRST_PACE, learnt } from '../core/learn/bite-rate.ts';
import type { Learnt } from '../core/learn/bite-rate.ts';
import type { Rate } from '../core/learn/rate.ts';
import { learntCell } from '../core/learn/cell-line.ts';
import type { LearntCell } from '../core/learn/cell-line.ts';
import type { CellPoint } from '../core/run/knob.ts';
import { lentBy } from '../core/learn/lent.ts';
import type { Lent } from '../core/learn/lent.ts';
import { pairOf } from './job-summary.ts';
import type { MetalAndSalt, JobSummary } from './job-summary.ts';

/** The rates and readings of one metal and salt. */
export interface PairRates extends MetalAndSalt {
  readonly rates: readonly Rate[];
  readonly paces: readonly Rate[];
  readonly points: readonly CellPoint[];
}

/** What all jobs of a notebook show, by metal and salt. */
export type BenchRates = ReadonlyMap<string, PairRates>;

const keyOf = ({ family, anion }: MetalAndSalt): string => `${family} ${anion}`;

/** @param except id of the job that is being planned: it must not learn from itself */
export function ratesIn(summaries: readonly JobSummary[], except: string): BenchRates {
  const pairs = new Map<string, PairRates>();
  for (const { id, pair, rate, pace, points } of summaries) {
    if (id === except || !pair || (!rate && !pace && points.length === 0)) continue;
    const key = keyOf(pair);
    const before = pairs.get(key) ?? { ...pair, rates: [], paces: [], points: [] };
    pairs.set(key, {
      ...before,
      rates: rate ? [...before.rates, rate] : before.rates,
      paces: pace ? [...before.paces, pace] : before.paces,
      points: [...before.points, ...points],
    });
  }
  return pairs;
}

const tableOf = ({ family, anion }: MetalAndSalt): number => yieldPriors[family][anion].median.value;

/** What the maker's other metals and salts suggest for this one; null where there are none. */
export const lentFor = (rates: BenchRates, pair: MetalAndSalt): Lent | null =>
  lentBy(
    [...rates.values()]
      .filter((other) => keyOf(other) !== keyOf(pair))
      .map((other) => ({ table: tableOf(other), rates: other.rates })),
  );

/** What earlier jobs show about a metal and a salt; null before the first job of any. */
export function learntFor(
  rates: BenchRates,
  metal: string,
  salt: string,
  strip: Rate | null = null,
): Learnt | null {
  const pair = pairOf(metal, salt);
  if (!pair) return null;
  const own = [...(rates.get(keyOf(pair))?.rates ?? []), ...(strip ? [strip] : [])];
  return learnt(tableOf(pair), own, lentFor(rates, pair));
}

/** What volts and amps of earlier jobs show about the cell; null before the first job with both. */
export function cellFor(rates: BenchRates, metal: string, salt: string): LearntCell | null {
  const pair = pairOf(metal, salt);
  const points = pair && rates.get(keyOf(pair))?.points;
  return points ? learntCell(offsets[pair.family][pair.anion].spread, points) : null;
}

/** How fast jobs without an ammeter have gone, as a share of the tables' current; null before the first. */
export function paceFor(rates: BenchRates, metal: string, salt: string): Learnt | null {
  const pair = pairOf(metal, salt);
  const own = pair && rates.get(keyOf(pair))?.paces;
  return pair && own && own.length > 0
    ? learnt(1 / practicePace(pair.family, pair.anion).median.value, own, null, FIRST_PACE)
    : null;
}
