import { fromSi } from '../units/convert.ts';
import type { JobInput } from './job-input.ts';
import type { Figures } from './plan.ts';

/** A recipe that the maker's scale can weigh. */
export type PieceWeighing =
  | { readonly kind: 'weigh'; readonly grams: number }
  /** more than is needed, at the same strength: pour off what the tub takes */
  | { readonly kind: 'pour'; readonly grams: number; readonly waterMl: number; readonly pourMl: number };

/** Amount that a kitchen scale, or a packet with a printed weight, gives exactly enough, g. */
const WHOLE = 50;
/** A mass below this many steps of the scale would be wrong by more than a tenth. */
const LEAST_STEPS = 5;
/** Distance of the marks on a jug, mL. */
const JUG = 5;

/** Plans stored before the scale was asked gave salt to a tenth of a gram. */
const DIGIT = 0.1;

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
  /** volume of bath that the tub takes, mL */
  readonly bathMl: number;
}

/**
 * Rounds the salt to the scale, within the salt's own range. If the scale is too coarse, or there is none, it takes a whole number of 50 g
 * and the water that gives the same strength: the strength does not depend on how much is mixed.
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

/** How the plan's salt is weighed on this bench's scale; null for a bath that is mixed already, or a plan without figures. */
export function weighingOf(
  { bath, workshop }: JobInput,
  figures: Figures,
): (PieceWeighing & { /** whole mL */ readonly tubWaterMl: number }) | null {
  const { salt_mass: salt, bath_volume: volume } = figures;
  if (!salt || !volume || bath.record !== null) return null;
  const step = workshop === undefined ? DIGIT : workshop.scale === null ? null : fromSi(workshop.scale, 'g');
  return {
    ...weighingFor(
      {
        grams: salt.value,
        low: salt.low,
        high: salt.high,
        strength: bath.strength,
        bathMl: volume.value,
      },
      step,
    ),
    tubWaterMl: Math.round(figures.water_volume?.value ?? 0),
  };
}
