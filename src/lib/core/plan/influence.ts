import { RANGE_Z } from '../units/range.ts';
import { drawFrom, inputIds } from './budget.ts';
import type { Budget, Draw, InputId } from './budget.ts';
import type { TriedId, Span } from './what-if.ts';

/*
 * Each input is tried at 5 and 95 % with the others at their medians, shares by the squares of the swings: a
 * maker can follow that, and it costs 27 evaluations. Inputs that act together are not told.
 */

/** How far one thing alone moves the depth. */
export interface Influence {
  readonly id: InputId | TriedId;
  /** depth, um, with this thing at its low and its high end and all others as planned */
  readonly low: number;
  readonly high: number;
  /** share of all that moves the depth, 0 to 1; squares of the swings are added */
  readonly share: number;
  /** its own ends, where another value can be tried */
  readonly span: Span | null;
}

/** A thing with the depths at its two ends, um, in any order. */
export type Moved = Pick<Influence, 'id' | 'span'> & { readonly ends: readonly [number, number] };

/** Things that move the depth by less than this share of it are left out. */
const WORTH = 0.002;

/** Each uncertain input at the low and at the high end of what it may be. @param depthOf the chain's depth for a draw, um */
export function inputsMoved(
  budget: Budget,
  depthOf: (draw: Draw) => number,
  spanOf: (id: InputId, at: readonly [low: Draw, high: Draw]) => Span | null,
): readonly Moved[] {
  const at = (input: number, deviate: number): Draw =>
    drawFrom(
      budget,
      inputIds.map((_, n) => (n === input ? deviate : 0)),
    );
  return inputIds.map((id, n) => {
    const draws = [at(n, -RANGE_Z), at(n, RANGE_Z)] as const;
    return { id, ends: [depthOf(draws[0]), depthOf(draws[1])], span: spanOf(id, draws) };
  });
}

/** Greatest first, what moves nothing left out. @param planned depth as planned, um */
export function influencesOf(moved: readonly Moved[], median: number): readonly Influence[] {
  const worth = moved
    .map(({ id, span, ends }) => ({
      id,
      span,
      low: Math.min(...ends, median),
      high: Math.max(...ends, median),
    }))
    .filter(({ low, high }) => high - low > WORTH * median);
  const whole = worth.reduce((sum, { low, high }) => sum + (high - low) ** 2, 0);
  return worth
    .map((one) => ({ ...one, share: (one.high - one.low) ** 2 / whole }))
    .toSorted((a, b) => b.share - a.share);
}
