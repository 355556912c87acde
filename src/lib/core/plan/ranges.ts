import { evenSample, normalQuantile, quantile } from '../units/sample.ts';
import { drawFrom, inputIds } from './budget.ts';
import type { Budget, Draw } from './budget.ts';
import type { Outcome } from './outcome.ts';

/** Draws behind every range. */
export const DRAWS = 512;

/** Standard normal deviates, DRAWS·inputIds.length, those of one draw next to each other. */
const deviates = evenSample(DRAWS, inputIds.length).map(normalQuantile);

/** Low and high by figure id. */
export type Ranges = Readonly<Record<string, readonly [low: number, high: number]>>;

/**
 * Evaluates the whole chain for a fixed, evenly spread sample of the budget and takes 5 % and 95 % of
 * each figure. The value at the medians is always inside.
 * @param outcomeOf the chain, for one draw
 * @param median the outcome at the medians
 */
export function rangesOf(budget: Budget, outcomeOf: (draw: Draw) => Outcome, median: Outcome): Ranges {
  const dimensions = inputIds.length;
  const ids = Object.keys(median);
  const columns = ids.map(() => new Float64Array(DRAWS));
  for (let n = 0; n < DRAWS; n += 1) {
    const outcome = outcomeOf(drawFrom(budget, deviates.subarray(n * dimensions, (n + 1) * dimensions)));
    ids.forEach((id, k) => {
      (columns[k] as Float64Array)[n] = outcome[id] as number;
    });
  }
  return Object.fromEntries(
    ids.map((id, k) => {
      const column = (columns[k] as Float64Array).sort();
      const value = median[id] as number;
      return [id, [Math.min(value, quantile(column, 0.05)), Math.max(value, quantile(column, 0.95))]];
    }),
  );
}
