/** A recipe that a maker's scale can show. */
export type Weighing =
  | { readonly kind: 'weigh'; readonly grams: number }
  /** dissolve a round mass in a round volume and pour off what is wanted */
  | { readonly kind: 'pour'; readonly grams: number; readonly waterMl: number; readonly pourMl: number };

/** Salt for a stock that a kitchen scale shows well, g. */
const STOCK = 100;

/**
 * Rounds the salt to the scale, or makes a larger stock to pour from when there is no fine scale.
 * @param grams salt wanted
 * @param strength g per litre of water
 * @param step smallest step of the scale, g; null without a fine one
 */
export function weighingFor(grams: number, strength: number, step: number | null): Weighing {
  if (step !== null && grams >= 5 * step)
    return { kind: 'weigh', grams: Number((Math.round(grams / step) * step).toPrecision(6)) };
  const stock = STOCK * Math.max(1, Math.ceil(grams / STOCK));
  return {
    kind: 'pour',
    grams: stock,
    waterMl: Math.round((1000 * stock) / strength),
    pourMl: Math.round((1000 * grams) / strength),
  };
}
