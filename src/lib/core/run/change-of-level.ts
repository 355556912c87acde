import type { Level } from './level.ts';

/** How a level changes: at once, gradually, faster and faster, slower and slower, or back and forth. */
export type LevelShape = 'step' | 'ramp' | 'runaway' | 'decay' | 'wander';

export interface LevelChange {
  readonly shape: LevelShape;
  /** change of the level's logarithm from the first readings to the last */
  readonly change: number;
}

/** A change is believed only if it reduces the misfit by this much, in squared standard deviations. */
const BELIEVED = 14;
/** Penalty on the misfit for each further parameter of a shape. */
const COST = 2;

interface Fit {
  readonly misfit: number;
  readonly change: number;
}

/**
 * Fits a level that changes in a given shape, from 0 before the change to 1 at its end. Exact points weigh
 * more.
 */
function fitted(points: readonly Level[], shape: readonly number[]): Fit {
  let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0];
  for (const [n, { level, deviation }] of points.entries()) {
    const weight = 1 / deviation ** 2;
    const x = shape[n] as number;
    w += weight;
    wx += weight * x;
    wy += weight * level;
    wxx += weight * x * x;
    wxy += weight * x * level;
  }
  const spread = w * wxx - wx * wx;
  const rise = spread > 1e-12 ? (w * wxy - wx * wy) / spread : 0;
  const base = (wy - rise * wx) / w;
  const misfit = points.reduce(
    (sum, { level, deviation }, n) => sum + ((level - base - rise * (shape[n] as number)) / deviation) ** 2,
    0,
  );
  return { misfit, change: rise * (shape.at(-1) as number) };
}

/**
 * Shapes of a gradual change: x runs from 0 at its beginning to 1 at the last reading. Each family has one
 * parameter.
 */
const families: readonly {
  readonly shape: LevelShape;
  readonly bends: readonly number[];
  readonly at: (x: number, bend: number) => number;
  /** direction it may go: up, down, or either */
  readonly sign: 1 | -1 | 0;
}[] = [
  // conductance grows in proportion to the bare area
  {
    shape: 'ramp',
    bends: [0.3, 0.6, 1],
    at: (x, bend) => Math.log(1 + bend * x) / Math.log(1 + bend),
    sign: 1,
  },
  // a gap that closes at a steady rate: 1/(1 − x)
  {
    shape: 'runaway',
    bends: [0.7, 0.85, 0.95],
    at: (x, bend) => Math.log(1 - bend * x) / Math.log(1 - bend),
    sign: 1,
  },
  // a film that grows to a final thickness
  {
    shape: 'decay',
    bends: [0.5, 1.5, 3],
    at: (x, bend) => (1 - Math.exp(-bend * x)) / (1 - Math.exp(-bend)),
    sign: -1,
  },
];

/**
 * The change of a run's level that explains its readings best.
 * @returns null when it is steady within the error of the meters, or there are fewer than two readings
 */
export function changes(points: readonly Level[]): LevelChange | null {
  const last = points.at(-1);
  if (!last || points.length < 2) return null;
  const steady = fitted(
    points,
    points.map(() => 0),
  ).misfit;
  let best: (LevelChange & { misfit: number }) | null = null;
  const take = (shape: LevelShape, { misfit, change }: Fit, cost: number): void => {
    const all = misfit + cost;
    if (!best || all < best.misfit) best = { shape, change, misfit: all };
  };
  for (let from = 1; from < points.length; from += 1) {
    const step = points.map((_, n) => Number(n >= from));
    take('step', fitted(points, step), 2 * COST);
    // when the change begins between two readings, take the middle
    const begin = ((points[from - 1] as Level).minutes + (points[from] as Level).minutes) / 2;
    if (points.length - from < 2) continue;
    for (const start of [(points[from - 1] as Level).minutes, begin])
      for (const { shape, bends, at, sign } of families)
        for (const bend of bends) {
          const fit = fitted(
            points,
            points.map(({ minutes }) => at(Math.max(0, (minutes - start) / (last.minutes - start)), bend)),
          );
          if (sign * fit.change >= 0) take(shape, fit, 3 * COST);
        }
  }
  // when no shape explains the readings, the level goes back and forth
  const found = best as (LevelChange & { misfit: number }) | null;
  if (!found || steady - found.misfit < BELIEVED) return null;
  const left = found.misfit - 3 * COST;
  return left > 6 * Math.max(1, points.length - 3) ? { shape: 'wander', change: found.change } : found;
}
