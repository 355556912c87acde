import { residual } from './operator.ts';
import type { Network } from './operator.ts';
import { sweepBackward, sweepForward } from './smoother.ts';
import { coarsen, prolongate, restrict } from './transfer.ts';

interface Level {
  readonly network: Network;
  readonly u: Float64Array;
  readonly f: Float64Array;
  readonly rest: Float64Array;
}

/** Aggregates move too little of a smooth error; this makes good for it. */
const OVER = 1.8;
/** Cells of a level that sweeps alone solve well enough. */
const FEW = 60;
const SWEEPS_AT_END = 12;
/** Upper levels are visited twice: they are small against the one above. */
const TWICE_FROM = 1;

/** An aggregation multigrid for one network: a preconditioner. */
export interface Multigrid {
  /** z ≈ A⁻¹·r, a little different each time it is asked: for flexible conjugate gradients */
  readonly precondition: (r: Float64Array, z: Float64Array) => void;
  readonly levels: number;
}

/** @param finest its arrays are read, never written */
export function multigrid(finest: Network): Multigrid {
  const networks = [finest];
  for (;;) {
    const last = networks.at(-1) as Network;
    if (last.nx * last.ny * last.nz <= FEW) break;
    networks.push(coarsen(last));
  }
  const levels: readonly Level[] = networks.map((network, n) => ({
    network,
    // on the finest level the caller's own vectors are used
    u: new Float64Array(n === 0 ? 0 : network.length),
    f: new Float64Array(n === 0 ? 0 : network.length),
    rest: new Float64Array(network.length),
  }));

  function cycle(n: number, u: Float64Array, f: Float64Array): void {
    const { network, rest } = levels[n] as Level;
    const next = levels[n + 1];
    if (next === undefined) {
      for (let sweep = 0; sweep < SWEEPS_AT_END; sweep += 1) {
        sweepForward(network, u, f);
        sweepBackward(network, u, f);
      }
      return;
    }
    sweepForward(network, u, f);
    residual(network, u, f, rest);
    restrict(network, next.network, rest, next.f);
    next.u.fill(0);
    cycle(n + 1, next.u, next.f);
    if (n + 1 >= TWICE_FROM && n + 2 < levels.length) cycle(n + 1, next.u, next.f);
    prolongate(network, next.network, next.u, OVER, u);
    sweepBackward(network, u, f);
  }

  return {
    levels: levels.length,
    precondition: (r, z) => {
      z.fill(0);
      cycle(0, z, r);
    },
  };
}
