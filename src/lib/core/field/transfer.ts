import { closeNetwork, emptyNetwork } from './operator.ts';
import type { Network } from './operator.ts';

/** Sizes of the cells along each axis, m. */
export type Sizes = readonly [Float64Array, Float64Array, Float64Array];
/** For each cell along an axis, the aggregate that takes it. */
type Parents = readonly [Int32Array, Int32Array, Int32Array];

/** A network, the one of its aggregates, and who belongs to whom. */
export interface Step {
  readonly fine: Network;
  readonly coarse: Network;
  readonly parents: Parents;
  readonly sizes: Sizes;
}

/** Neighbours along one axis are paired while the pair is no longer than this. */
function paired(sizes: Float64Array, longest: number): { parents: Int32Array; sizes: Float64Array } {
  const parents = new Int32Array(sizes.length);
  const merged: number[] = [];
  for (let i = 0; i < sizes.length;) {
    const pair = (sizes[i] as number) + (sizes[i + 1] ?? Infinity);
    const taken = pair <= longest ? 2 : 1;
    for (let n = 0; n < taken; n += 1) parents[i + n] = merged.length;
    merged.push(taken === 2 ? pair : (sizes[i] as number));
    i += taken;
  }
  return { parents, sizes: Float64Array.from(merged) };
}

/** A pair may be this much longer than twice the smallest cell: snapped cells differ a little. */
const SLACK = 1.5;

/**
 * Aggregates of up to 2 × 2 × 2 cells. Only neighbours about as small as the smallest are joined, so that
 * long flat cells are not made longer: without this a graded grid would need five times the steps.
 */
function aggregates(sizes: Sizes): { parents: Parents; sizes: Sizes } {
  const divisible = sizes.filter((own) => own.length > 1);
  for (let longest = 2 * SLACK * Math.min(...divisible.map((own) => Math.min(...own))); ; longest *= 2) {
    const [x, y, z] = sizes.map((own) => paired(own, longest)) as [
      ReturnType<typeof paired>,
      ReturnType<typeof paired>,
      ReturnType<typeof paired>,
    ];
    const before = sizes.reduce((product, own) => product * own.length, 1);
    const after = x.sizes.length * y.sizes.length * z.sizes.length;
    if (after <= 0.5 * before || after === 1)
      return { parents: [x.parents, y.parents, z.parents], sizes: [x.sizes, y.sizes, z.sizes] };
  }
}

/**
 * The network of aggregates: what passes between two of them is the sum of what passes between their cells
 * (Galerkin, piecewise constant). Seven points stay seven points, and blocked faces and metal need no care
 * of their own.
 */
export function coarsen(fine: Network, fineSizes: Sizes): Step {
  const { parents, sizes } = aggregates(fineSizes);
  const [px, py, pz] = parents;
  const { nx, ny, nz, start, tx, ty, tz, diagonal } = fine;
  const coarse = emptyNetwork(sizes[0].length, sizes[1].length, sizes[2].length);
  const layer = nx * ny;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((py[j] as number) + coarse.ny * (pz[k] as number));
      const isLastY = py[j] !== py[j + 1];
      const isLastZ = pz[k] !== pz[k + 1];
      for (let i = 0; i < nx; i += 1) {
        const n = start + i + nx * (j + ny * k);
        const c = row + (px[i] as number);
        // what leaves to metal is what the diagonal has over its neighbours
        coarse.diagonal[c] =
          (coarse.diagonal[c] as number) +
          ((diagonal[n] as number) -
            (tx[n] as number) -
            (tx[n - 1] as number) -
            (ty[n] as number) -
            (ty[n - nx] as number) -
            (tz[n] as number) -
            (tz[n - layer] as number));
        if (px[i] !== px[i + 1]) coarse.tx[c] = (coarse.tx[c] as number) + (tx[n] as number);
        if (isLastY) coarse.ty[c] = (coarse.ty[c] as number) + (ty[n] as number);
        if (isLastZ) coarse.tz[c] = (coarse.tz[c] as number) + (tz[n] as number);
      }
    }
  // rounding leaves crumbs where no metal is
  for (let n = 0; n < coarse.length; n += 1) if ((coarse.diagonal[n] as number) < 0) coarse.diagonal[n] = 0;
  closeNetwork(coarse);
  return { fine, coarse, parents, sizes };
}

/** Sums what the cells of each aggregate hold. */
export function restrict({ fine, coarse, parents }: Step, values: Float64Array, sums: Float64Array): void {
  const [px, py, pz] = parents;
  sums.fill(0);
  const { nx, ny, nz, start } = fine;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((py[j] as number) + coarse.ny * (pz[k] as number));
      const from = start + nx * (j + ny * k);
      for (let i = 0; i < nx; i += 1) {
        const c = row + (px[i] as number);
        sums[c] = (sums[c] as number) + (values[from + i] as number);
      }
    }
}

/** Adds to each cell what its aggregate holds, times a factor. */
export function prolongate(
  { fine, coarse, parents }: Step,
  values: Float64Array,
  factor: number,
  u: Float64Array,
): void {
  const [px, py, pz] = parents;
  const { nx, ny, nz, start } = fine;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((py[j] as number) + coarse.ny * (pz[k] as number));
      const from = start + nx * (j + ny * k);
      for (let i = 0; i < nx; i += 1)
        u[from + i] = (u[from + i] as number) + factor * (values[row + (px[i] as number)] as number);
    }
}
