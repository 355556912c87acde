/** Mean of the points measured, in their own unit; 0 without any. */
export const meanDepth = (points: readonly number[]): number =>
  points.reduce((sum, one) => sum + one, 0) / Math.max(1, points.length);

/** Steps of the scale below which a loss of weight tells the depth only coarsely. */
const FINE_STEPS = 3;

/** Whether a scale is coarse for what came off. @param loss,step g */
export const isCoarse = (loss: number, step: number): boolean => loss < FINE_STEPS * step;
