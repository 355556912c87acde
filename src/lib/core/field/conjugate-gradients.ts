import { multigrid } from './cycle.ts';
import { apply, residual } from './operator.ts';
import type { Network } from './operator.ts';
import type { Axes } from './transfer.ts';

export interface Solved {
  readonly iterations: number;
  /** ‖f − A·u‖ over ‖f‖ */
  readonly relativeResidual: number;
  readonly converged: boolean;
  readonly stopped: boolean;
}

export interface SolveOptions {
  /** residual over right side at which to stop */
  readonly tolerance?: number;
  readonly most?: number;
  /** called after each iteration; returning true stops it */
  readonly shouldStop?: (iteration: number, relativeResidual: number) => boolean;
}

function dot({ start, length }: Network, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let n = start, end = length - start; n < end; n += 1) sum += (a[n] as number) * (b[n] as number);
  return sum;
}

/**
 * Flexible conjugate gradients on a network, preconditioned by the aggregation multigrid.
 * @param u first guess; overwritten with the potentials
 */
export function conjugateGradients(
  network: Network,
  axes: Axes,
  f: Float64Array,
  u: Float64Array,
  { tolerance = 1e-8, most = 100, shouldStop = () => false }: SolveOptions = {},
): Solved {
  const { start, length } = network;
  const precondition = multigrid(network, axes);
  const [r, z, p, q] = [0, 1, 2, 3].map(() => new Float64Array(length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  residual(network, u, f, r);
  const size = Math.sqrt(dot(network, f, f));
  if (size === 0) return { iterations: 0, relativeResidual: 0, converged: true, stopped: false };
  let relative = Math.sqrt(dot(network, r, r)) / size;
  let before = 0;
  for (let iteration = 1; iteration <= most; iteration += 1) {
    if (relative <= tolerance)
      return { iterations: iteration - 1, relativeResidual: relative, converged: true, stopped: false };
    if (shouldStop(iteration, relative))
      return { iterations: iteration - 1, relativeResidual: relative, converged: false, stopped: true };
    precondition(r, z);
    // z·(r − r_old) = −α·z·q of the last step, as r = r_old − α·q
    const beta = iteration === 1 ? 0 : -dot(network, z, q) / before;
    for (let n = start, end = length - start; n < end; n += 1)
      p[n] = (z[n] as number) + beta * (p[n] as number);
    apply(network, p, q);
    const curvature = dot(network, p, q);
    const alpha = dot(network, p, r) / curvature;
    for (let n = start, end = length - start; n < end; n += 1) {
      u[n] = (u[n] as number) + alpha * (p[n] as number);
      r[n] = (r[n] as number) - alpha * (q[n] as number);
    }
    before = curvature;
    relative = Math.sqrt(dot(network, r, r)) / size;
  }
  return { iterations: most, relativeResidual: relative, converged: relative <= tolerance, stopped: false };
}
