/** A recipe that a maker's scale can show. */
export type PieceWeighing =
  | { readonly kind: 'weigh'; readonly grams: number }
  /** more than is wanted, of the same strength: pour off what the tub takes */
  | { readonly kind: 'pour'; readonly grams: number; readonly waterMl: number; readonly pourMl: number };

/** What a kitchen scale, or a packet with its weight printed on, gives well enough, g. */
const WHOLE = 50;
/** A mass below this many steps of the scale is shown too coarsely: off by more than a tenth. */
const LEAST_STEPS = 5;
/** Marks on a jug, mL. */
const JUG = 5;

const nearest = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toPrecision(6));

interface Wanted {
  /** salt for the tub, g */
  readonly grams: number;
  /** ends of its range, which stand beside what is weighed */
  readonly low: number;
  readonly high: number;
  /** g per litre of water */
  readonly strength: number;
  /** bath that the tub takes, mL */
  readonly bathMl: number;
}

/**
 * Rounds the salt to the scale, within the salt's own range. Where the scale is too coarse, or there is none, mixes a whole number of
 * 50 g into the water that gives the same strength: strength does not care how much is made.
 * @param step smallest step of the scale, g; null without a fine one
 */
export function weighingFor(
  { grams, low, high, strength, bathMl }: Wanted,
  step: number | null,
): PieceWeighing {
  const shown = step === null ? 0 : nearest(grams, step);
  if (step !== null && grams >= LEAST_STEPS * step && shown >= low && shown <= high)
    return { kind: 'weigh', grams: shown };
  const stock = WHOLE * Math.max(1, Math.ceil(grams / WHOLE));
  return {
    kind: 'pour',
    grams: stock,
    waterMl: nearest((1000 * stock) / strength, JUG),
    pourMl: nearest(bathMl, JUG),
  };
}
