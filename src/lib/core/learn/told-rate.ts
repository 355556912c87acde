import type { Rate } from './rate.ts';

/** What was measured on a finished job. */
export interface MeasuredBite {
  /** mass lost by the whole batch, g; null if it was not weighed twice */
  readonly lost: number | null;
  /** smallest step of the scale, g */
  readonly step: number;
  /** mean depth, μm, and the number of points; null when not measured */
  readonly depth: number | null;
  readonly points: number;
  /** measured by a gauge, or on a witness tab snapped through */
  readonly by: 'gauge' | 'tab';
  /** depth as judged by eye, over the wanted depth; null when not judged */
  readonly looks: number | null;
}

/** What its plan expects for the charge that flowed. */
export interface ExpectedBite {
  /** bite rate used in the plan */
  readonly rate: number;
  /** g, of the whole batch */
  readonly lost: number;
  /** mean depth, μm */
  readonly depth: number;
  /** depth wanted, μm */
  readonly wanted: number;
}

/** Error of a jeweller's scale, one standard deviation, g. A coarser scale rounds to its step. */
const SCALE = 0.01;
const ROUNDED = 1 / Math.sqrt(12);
/** Error of a depth gauge, and of a tab seen under a magnifier, one standard deviation, μm. */
const OFF = { gauge: 10, tab: 30 } as const;
/** Error of a depth judged by eye, as a share of the wanted depth. Our own estimate. */
const EYE = 0.3;

/**
 * The bite rate shown by a finished job: measured over expected, times the rate used in the plan. Weight lost
 * is preferred to depth, and depth to looks.
 * @returns null when nothing was measured
 */
export function toldRate(measured: MeasuredBite, expected: ExpectedBite): Omit<Rate, 'id'> | null {
  const { lost, step, depth, points, by, looks } = measured;
  const scale = Math.max(SCALE, step * ROUNDED);
  if (lost !== null && lost > 2 * scale)
    return { way: 'mass', rate: (expected.rate * lost) / expected.lost, off: (Math.SQRT2 * scale) / lost };
  if (depth !== null && depth > 0)
    return {
      way: 'depth',
      rate: (expected.rate * depth) / expected.depth,
      off: OFF[by] / depth / Math.sqrt(points),
    };
  return looks === null
    ? null
    : { way: 'looks', rate: (expected.rate * looks * expected.wanted) / expected.depth, off: EYE };
}
