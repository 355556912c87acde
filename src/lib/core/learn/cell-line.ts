import type { CellPoint } from '../run/knob.ts';
import { RANGE_Z, rangeEnds } from '../units/range.ts';
import { lineAfter, lineAt } from './line.ts';
import type { LineBelief } from './line.ts';
import { studentQuantile } from './student.ts';

/*
 * Volts above the table's offset = offset + slope · modelled, one point for each setting. Before any job, the
 * belief is an offset of 0 and a slope of 1 ± 0.35, with 0.15 V of scatter (our judgement). The plan draws
 * the slope and the volts at the pivot separately, because there they are independent. The other
 * uncertainties of the resistance are kept, so the range is too wide rather than too narrow.
 */

/** What a maker's readings show about the cell: `over = offset + slope · modelled`. */
export interface LearntCell {
  /** V, the point where offset and slope are independent, among the readings */
  readonly pivot: number;
  /** V above the table's offset at that point, and one standard deviation */
  readonly over: number;
  readonly overSpread: number;
  /** resistance, as a factor of the modelled one */
  readonly slope: number;
  readonly slopeSpread: number;
  /** number of points used */
  readonly points: number;
}

/** Limits of what is possible. Beyond them volts or amps were noted wrong, and are ignored. */
export const cellLimits = { slope: [0.2, 6], over: 12, spread: 3 } as const;

/** Scatter of one maker's jobs around their line, V: our judgement, no published value. */
const SCATTER = 0.15;
/** Uncertainty of the modelled resistance before any job, as a share: our judgement too. */
const SLOPE_SPREAD = 0.35;
/** Weight of the first belief in the scatter: three jobs outweigh it. */
const SHAPE = 1.5;

const canBe = ({ modelled, over }: CellPoint): boolean =>
  modelled > 0 && modelled <= cellLimits.over && Math.abs(over) <= cellLimits.over;

/** The belief before any job: the table's offset and the modelled resistance. */
export const firstBelief = (offsetSpread: number): LineBelief => ({
  m: [0, 1],
  v: [(offsetSpread / SCATTER) ** 2, 0, (SLOPE_SPREAD / SCATTER) ** 2],
  a: SHAPE,
  b: SHAPE * SCATTER ** 2,
});

/**
 * The cell of this set-up, from the table's offset and the maker's own jobs.
 * @param offsetSpread V, one standard deviation of the table's offset
 * @returns null before the first reading, or when the readings are not possible
 */
export function learntCell(offsetSpread: number, points: readonly CellPoint[]): LearntCell | null {
  const good = points.filter(canBe);
  if (good.length === 0) return null;
  const belief = lineAfter(
    firstBelief(offsetSpread),
    good.map(({ modelled, over }) => [modelled, over]),
  );
  const [, across, lower] = belief.v;
  const pivot = -across / lower;
  const at = lineAt(belief, pivot);
  const stretch = studentQuantile(rangeEnds.high, at.freedom) / RANGE_Z;
  const [least, most] = cellLimits.slope;
  const slope = belief.m[1];
  if (!(slope >= least && slope <= most) || !(pivot >= 0)) return null;
  return {
    pivot,
    over: at.location,
    overSpread: Math.min(cellLimits.spread, stretch * at.scale),
    slope,
    slopeSpread: Math.min(cellLimits.spread, stretch * Math.sqrt((belief.b / belief.a) * lower)),
    points: good.length,
  };
}
