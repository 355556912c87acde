import { rangeEnds } from '../units/range.ts';
import { evenSample, normalQuantile, quantile } from '../units/sample.ts';
import { drawFrom, inputIds } from './budget.ts';
import type { Budget, Draw } from './budget.ts';
import { figureIds, figureIn } from './outcome.ts';
import type { FigureId, Outcome } from './outcome.ts';

/*
 * Ranges come from one fixed lattice of 512 draws over the named inputs, each run through the whole chain,
 * so that limits (the supply, the threshold voltage) bend the ranges as they bend the value. Log-normal sums
 * by hand would not. It costs some 20 ms a plan. Reopen if a figure needs tails beyond 5 and 95 %.
 */

/** Draws behind every range. */
export const DRAWS = 512;

/** Standard normal deviates, DRAWS·inputIds.length, those of one draw next to each other. */
const deviates = evenSample(DRAWS, inputIds.length).map(normalQuantile);

/** Low and high of each figure of an outcome. */
export type Ranges = Readonly<Partial<Record<FigureId, readonly [low: number, high: number]>>>;

/**
 * Evaluates the whole chain for a fixed, evenly spread sample of the budget and takes the ends of
 * the range of each figure. The value at the medians is always inside.
 * @param outcomeOf the chain, for one draw
 * @param median the outcome at the medians
 */
export function rangesOf(budget: Budget, outcomeOf: (draw: Draw) => Outcome, median: Outcome): Ranges {
  const dimensions = inputIds.length;
  const columns = figureIds.flatMap((id) => {
    const value = median[id];
    return value === undefined ? [] : [{ id, value, drawn: new Float64Array(DRAWS) }];
  });
  for (let n = 0; n < DRAWS; n += 1) {
    const outcome = outcomeOf(drawFrom(budget, deviates.subarray(n * dimensions, (n + 1) * dimensions)));
    for (const { id, drawn } of columns) drawn[n] = figureIn(outcome, id);
  }
  return Object.fromEntries(
    columns.map(({ id, value, drawn }) => {
      drawn.sort();
      const [low, high] = [quantile(drawn, rangeEnds.low), quantile(drawn, rangeEnds.high)];
      return [id, [Math.min(value, low), Math.max(value, high)]];
    }),
  );
}
