import { closeNetwork, emptyNetwork } from './operator.ts';
import type { Network } from './operator.ts';

/** The cells along one axis: their sizes, m, and 1 at lines where metal or mask begins or ends. */
export interface Cells {
  readonly sizes: Float64Array;
  readonly fixed: Uint8Array;
}
export type Axes = readonly [Cells, Cells, Cells];
/** The index of each cell's aggregate, along each axis. */
type Parents = readonly [Int32Array, Int32Array, Int32Array];

/** A network, the coarser network of its aggregates, and which cell belongs to which aggregate. */
export interface Step {
  readonly fine: Network;
  readonly coarse: Network;
  readonly parents: Parents;
  readonly axes: Axes;
}

interface Paired {
  readonly parents: Int32Array;
  readonly cells: Cells;
}

/**
 * Joins neighbours along one axis into pairs, as long as a pair is no longer than `longest`.
 * @param apart a pair may not cross a fixed line
 */
function paired({ sizes, fixed }: Cells, longest: number, apart: boolean): Paired {
  const parents = new Int32Array(sizes.length);
  const merged: number[] = [];
  const lines: number[] = [fixed[0] as number];
  for (let i = 0; i < sizes.length;) {
    const pair = (sizes[i] as number) + (sizes[i + 1] ?? Infinity);
    const taken = pair <= longest && !(apart && fixed[i + 1] === 1) ? 2 : 1;
    for (let n = 0; n < taken; n += 1) parents[i + n] = merged.length;
    merged.push(taken === 2 ? pair : (sizes[i] as number));
    i += taken;
    lines.push(fixed[i] as number);
  }
  return { parents, cells: { sizes: Float64Array.from(merged), fixed: Uint8Array.from(lines) } };
}

/**
 * A pair may be longer by this factor than twice the smallest cell, because cells fitted to edges differ a
 * little.
 */
const SLACK = 1.5;

/**
 * Aggregates of up to 2 × 2 × 2 cells. Only neighbours about as small as the smallest are joined, so that
 * long flat cells do not become longer. None are joined across a plate or the edge of a mask while others can
 * be, since the two sides of a board are not connected.
 */
function aggregates(axes: Axes): { parents: Parents; axes: Axes } {
  const cellsIn = (own: readonly { readonly sizes: Float64Array }[]): number =>
    own.reduce((product, { sizes }) => product * sizes.length, 1);
  const divisible = axes.filter(({ sizes }) => sizes.length > 1);
  const smallest = Math.min(...divisible.map(({ sizes }) => Math.min(...sizes)));
  for (let longest = 2 * SLACK * smallest; ; longest *= 2) {
    for (const apart of [true, false]) {
      const [x, y, z] = axes.map((own) => paired(own, longest, apart)) as [Paired, Paired, Paired];
      const after = cellsIn([x.cells, y.cells, z.cells]);
      if (after <= 0.5 * cellsIn(axes) || after === 1)
        return { parents: [x.parents, y.parents, z.parents], axes: [x.cells, y.cells, z.cells] };
    }
  }
}

/**
 * The network of aggregates: the conductance between two of them is the sum of those between their cells
 * (Galerkin, piecewise constant). It stays a seven-point network, and blocked faces and metal need no special
 * case.
 */
export function coarsen(fine: Network, fineAxes: Axes): Step {
  const { parents, axes } = aggregates(fineAxes);
  const [px, py, pz] = parents;
  const { nx, ny, nz, start, tx, ty, tz, diagonal } = fine;
  const [cx, cy, cz] = axes;
  const coarse = emptyNetwork(cx.sizes.length, cy.sizes.length, cz.sizes.length);
  const layer = nx * ny;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((py[j] as number) + coarse.ny * (pz[k] as number));
      const isLastY = py[j] !== py[j + 1];
      const isLastZ = pz[k] !== pz[k + 1];
      for (let i = 0; i < nx; i += 1) {
        const n = start + i + nx * (j + ny * k);
        const c = row + (px[i] as number);
        // the conductance to metal is the diagonal without those to neighbours
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
  // rounding can leave tiny negative values where there is no metal
  for (let n = 0; n < coarse.length; n += 1) if ((coarse.diagonal[n] as number) < 0) coarse.diagonal[n] = 0;
  closeNetwork(coarse);
  return { fine, coarse, parents, axes };
}

/** Sums the values of the cells of each aggregate. */
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

/** Adds to each cell the value of its aggregate, times a factor. */
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
