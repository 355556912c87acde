import { residual } from './operator.ts';
import type { Network } from './operator.ts';
import { sweepBackward, sweepForward } from './smoother.ts';
import { coarsen, prolongate, restrict } from './transfer.ts';
import type { Axes, Step } from './transfer.ts';

interface Level {
  readonly network: Network;
  /** to the next coarser level; null on the coarsest */
  readonly step: Step | null;
  readonly u: Float64Array;
  readonly f: Float64Array;
  readonly rest: Float64Array;
}

/** Aggregates correct a smooth error by too little; over-correction by this factor makes up for it. */
const OVER = 1.5;
/** A level with at most this many cells is solved by sweeps alone. */
const FEW = 60;
const SWEEPS_AT_END = 12;
/** A level is visited twice when it has at most 1/SMALL of the cells of the level above it. */
const SMALL = 2;

const cellsOf = ({ nx, ny, nz }: Network): number => nx * ny * nz;

/**
 * Sets z ≈ A⁻¹·r. The result changes a little from call to call, so conjugate gradients must be the flexible
 * kind.
 */
export type Preconditioner = (r: Float64Array, z: Float64Array) => void;

/**
 * An aggregation multigrid for one network.
 * @param finest its arrays are only read
 */
export function multigrid(finest: Network, axes: Axes): Preconditioner {
  const steps: Step[] = [];
  for (let network = finest, own = axes; cellsOf(network) > FEW;) {
    const step = coarsen(network, own);
    steps.push(step);
    [network, own] = [step.coarse, step.axes];
  }
  const networks = [finest, ...steps.map(({ coarse }) => coarse)];
  const levels: readonly Level[] = networks.map((network, n) => ({
    network,
    step: steps[n] ?? null,
    // the finest level uses the caller's own vectors
    u: new Float64Array(n === 0 ? 0 : network.length),
    f: new Float64Array(n === 0 ? 0 : network.length),
    rest: new Float64Array(network.length),
  }));

  function cycle(n: number, u: Float64Array, f: Float64Array): void {
    const { network, rest, step } = levels[n] as Level;
    const next = levels[n + 1];
    if (step === null || next === undefined) {
      for (let sweep = 0; sweep < SWEEPS_AT_END; sweep += 1) {
        sweepForward(network, u, f);
        sweepBackward(network, u, f);
      }
      return;
    }
    sweepForward(network, u, f);
    residual(network, u, f, rest);
    restrict(step, rest, next.f);
    next.u.fill(0);
    cycle(n + 1, next.u, next.f);
    if (next.step !== null && SMALL * cellsOf(next.network) <= cellsOf(network)) cycle(n + 1, next.u, next.f);
    prolongate(step, next.u, OVER, u);
    sweepBackward(network, u, f);
  }

  return (r, z) => {
    z.fill(0);
    cycle(0, z, r);
  };
}
