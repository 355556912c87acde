import type { Target } from './run.ts';

/** A value with its likely range. */
export interface DepthSpread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Half the 5 to 95 % range of the bare area, as a share: typed as an area, or as a share guessed by eye. */
const AREA = { area: 0.07, share: 0.13, later: 0.13 } as const;

/** What a plan expects, to compare a loss of weight with. */
export interface ExpectedLoss {
  /** mean depth, μm, and the mass of metal that it removes from the whole batch, g */
  readonly depth: number;
  readonly mass: number;
  /** thickness of the sheet, μm; no depth can be larger */
  readonly thickness: number;
  readonly areaFrom: keyof typeof AREA;
}

/**
 * Mean depth from a loss of weight, μm. It does not use amps or time, so it can check them.
 * @param loss g, of the whole batch
 * @param step smallest step of the scale, g
 * @returns null without a loss
 */
export function depthByLoss(
  { depth, mass, thickness, areaFrom }: ExpectedLoss,
  loss: number,
  step: number,
): DepthSpread | null {
  if (!(mass > 0) || !(loss > 0)) return null;
  const off = AREA[areaFrom];
  const at = (grams: number): number => Math.min(Math.max(0, (grams * depth) / mass), thickness);
  return {
    value: at(loss),
    low: at((loss - step) * (1 - off)),
    high: at((loss + step) * (1 + off)),
  };
}

/**
 * Mean depth from the charge counted, μm, in proportion to the planned depth and charge.
 * @param planned depth that the target's charge gives, μm
 * @param least,most A·h; they differ when it is not known when a run ended
 */
export function depthByCharge(
  planned: DepthSpread,
  { chargeAh }: Pick<Target, 'chargeAh'>,
  least: number,
  most: number,
): DepthSpread {
  const share = (charge: number): number => (chargeAh > 0 ? charge / chargeAh : 0);
  return {
    value: planned.value * share(most),
    low: planned.low * share(least),
    high: planned.high * share(most),
  };
}

/** Mean of the measured points, in their own unit; 0 without any. */
export const meanDepth = (points: readonly number[]): number =>
  points.reduce((sum, one) => sum + one, 0) / Math.max(1, points.length);

/** With a loss of fewer steps of the scale than this, the weight gives only a rough depth. */
const FINE_STEPS = 3;

/** Whether a scale is too coarse for a loss of weight. @param loss,step g */
export const isCoarse = (loss: number, step: number): boolean => loss < FINE_STEPS * step;
