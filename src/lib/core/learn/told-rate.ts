import type { Rate } from './rate.ts';

/** What a finished job showed of its bite. */
export interface MeasuredBite {
  /** g that came off the whole batch; null where it was not weighed twice */
  readonly lost: number | null;
  /** smallest step of the scale, g */
  readonly step: number;
  /** mean depth, μm, of so many points; null where none was measured */
  readonly depth: number | null;
  readonly points: number;
  /** a gauge, or a witness tab snapped through */
  readonly by: 'gauge' | 'tab';
  /** how deep it looks, of the wanted depth; null where nobody judged */
  readonly looks: number | null;
}

/** What its plan expected of the charge that flowed. */
export interface ExpectedBite {
  /** bite rate it was planned with */
  readonly rate: number;
  /** g, of the whole batch */
  readonly lost: number;
  /** mean depth, μm */
  readonly depth: number;
  /** depth wanted, μm */
  readonly wanted: number;
}

/** A jeweller's scale, one standard deviation, g; a coarser one rounds to its step. */
const SCALE = 0.01;
const ROUNDED = 1 / Math.sqrt(12);
/** One standard deviation of a depth gauge, and of a tab looked at under a glass, μm. */
const OFF = { gauge: 10, tab: 30 } as const;
/** How far the eye may be off, as a share of the wanted depth. Our own reading. */
const EYE = 0.3;

/**
 * The bite rate that a finished job tells: what came off over what was expected, times the rate it was planned with.
 * Weight lost counts before depth, and depth before looks.
 * @returns null where nothing was measured
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
