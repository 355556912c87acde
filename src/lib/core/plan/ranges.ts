import { evenSample, normalQuantile, quantile } from '../units/sample.ts';
import { drawFrom } from './budget.ts';
import type { Budget, Draw } from './budget.ts';
import type { Outcome } from './outcome.ts';

/** Draws behind every range. */
export const DRAWS = 512;

/** Low and high by figure id. */
export type Ranges = Readonly<Record<string, readonly [low: number, high: number]>>;

/**
 * Evaluates the whole chain for a fixed, evenly spread sample of the budget and takes 5 % and 95 % of
 * each figure. The value at the medians is always inside.
 * @param outcomeOf the chain, for one draw
 * @param middle the outcome at the medians
 */
export function rangesOf(budget: Budget, outcomeOf: (draw: Draw) => Outcome, middle: Outcome): Ranges {
  const dimensions = Object.keys(budget).length;
  const sample = evenSample(DRAWS, dimensions);
  const columns = new Map(Object.keys(middle).map((id) => [id, new Float64Array(DRAWS)]));
  for (let n = 0; n < DRAWS; n += 1) {
    const uniform = sample.subarray(n * dimensions, (n + 1) * dimensions);
    const outcome = outcomeOf(drawFrom(budget, Array.from(uniform, normalQuantile)));
    for (const [id, column] of columns) column[n] = outcome[id] as number;
  }
  const ranges: [string, readonly [number, number]][] = [];
  for (const [id, column] of columns) {
    column.sort();
    const value = middle[id] as number;
    ranges.push([id, [Math.min(value, quantile(column, 0.05)), Math.max(value, quantile(column, 0.95))]]);
  }
  return Object.fromEntries(ranges);
}
