import type { Target } from './run.ts';

/** A value with its likely range. */
export interface DepthSpread {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Half the 5 to 95 % band of the bare area: as typed, and as a share guessed by eye. */
const AREA = { area: 0.07, share: 0.13, later: 0.13 } as const;

/** What a plan expects a loss of weight to stand for. */
export interface ExpectedLoss {
  /** mean depth, μm, and the metal of the whole batch that it takes, g */
  readonly depth: number;
  readonly mass: number;
  /** of the sheet, μm: no depth is more */
  readonly thickness: number;
  readonly areaFrom: keyof typeof AREA;
}

/**
 * Mean depth that a loss of weight stands for, μm. It knows nothing of amps or time, so that it checks them.
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
 * Mean depth by the charge counted, μm: in proportion to what the plan expects of its own charge.
 * @param planned depth that the target's charge gives, μm
 * @param least,most A·h; apart where a run's end is in doubt
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

/** Mean of the points measured, in their own unit; 0 without any. */
export const meanDepth = (points: readonly number[]): number =>
  points.reduce((sum, one) => sum + one, 0) / Math.max(1, points.length);

/** Steps of the scale below which a loss of weight tells the depth only coarsely. */
const FINE_STEPS = 3;

/** Whether a scale is coarse for what came off. @param loss,step g */
export const isCoarse = (loss: number, step: number): boolean => loss < FINE_STEPS * step;
