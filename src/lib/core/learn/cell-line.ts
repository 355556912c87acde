import type { CellPoint } from '../run/knob.ts';
import { RANGE_Z, rangeEnds } from '../units/range.ts';
import { lineAfter, lineAt } from './line.ts';
import type { LineBelief } from './line.ts';
import { studentQuantile } from './student.ts';

/*
 * Volts over the threshold = offset + slope · modelled, one point for each setting of the knob, about the
 * table's threshold and a slope of 1 ± 0.35 with 0.15 V of scatter (judgements). The plan draws slope and
 * the volts at the pivot apart, where they are independent. The other doubts of the resistance stay, so that
 * the range is too wide rather than too narrow.
 */

/** What a bench shows of its cell: `over = offset + slope · modelled`. */
export interface LearntCell {
  /** V, where readings lie thickest: there offset and slope can be believed apart */
  readonly pivot: number;
  /** V that stand over there, above the table's offset, and one standard deviation */
  readonly over: number;
  readonly overSpread: number;
  /** resistance over the modelled one */
  readonly slope: number;
  readonly slopeSpread: number;
  /** readings learnt from */
  readonly points: number;
}

/** What can be: beyond it volts or amps were noted wrong, and teach nothing. */
export const cellLimits = { slope: [0.2, 6], over: 12, spread: 3 } as const;

/** V by which jobs of one bench scatter about its line: a judgement, no published value. */
const SCATTER = 0.15;
/** Of the modelled resistance: how far a bench may be off before any job; a judgement too. */
const SLOPE_SPREAD = 0.35;
/** A first belief in the scatter that three jobs outweigh. */
const SHAPE = 1.5;

const canBe = ({ modelled, over }: CellPoint): boolean =>
  modelled > 0 && modelled <= cellLimits.over && Math.abs(over) <= cellLimits.over;

/** The belief before any job: the table's offset, and the modelled resistance. */
export const firstBelief = (offsetSpread: number): LineBelief => ({
  m: [0, 1],
  v: [(offsetSpread / SCATTER) ** 2, 0, (SLOPE_SPREAD / SCATTER) ** 2],
  a: SHAPE,
  b: SHAPE * SCATTER ** 2,
});

/**
 * The cell of this bench, from the table's offset and its own jobs.
 * @param offsetSpread V, one standard deviation of the table's offset
 * @returns null before the first reading, or where what was read cannot be
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
