import { drawFrom, inputIds } from './budget.ts';
import type { Budget, Draw, InputId } from './budget.ts';

/** How far one input alone moves the depth. */
export interface Influence {
  readonly id: InputId;
  /** depth, um, with this input at 5 % and at 95 % of what it may be and all others at their medians */
  readonly low: number;
  readonly high: number;
  /** of all the inputs' moving, 0 to 1: shares add as squares do */
  readonly share: number;
}

/** Normal quantile of 95 %. */
const Z95 = 1.645;
/** Moves the depth by less than this share of it: not worth a line. */
const WORTH = 0.002;

/**
 * Each input's share in what may come out, greatest first.
 * @param depthOf the chain's depth for a draw, um
 */
export function influencesOf(budget: Budget, depthOf: (draw: Draw) => number): readonly Influence[] {
  const at = (input: number, deviate: number): number =>
    depthOf(
      drawFrom(
        budget,
        inputIds.map((_, n) => (n === input ? deviate : 0)),
      ),
    );
  const middle = at(-1, 0);
  const moved = inputIds
    .map((id, n) => {
      const [one, other] = [at(n, -Z95), at(n, Z95)];
      return { id, low: Math.min(one, other, middle), high: Math.max(one, other, middle) };
    })
    .filter(({ low, high }) => high - low > WORTH * middle);
  const whole = moved.reduce((sum, { low, high }) => sum + (high - low) ** 2, 0);
  return moved
    .map((one) => ({ ...one, share: (one.high - one.low) ** 2 / whole }))
    .toSorted((a, b) => b.share - a.share);
}
