import { closeNetwork, emptyNetwork } from './operator.ts';
import type { Network } from './operator.ts';

/** Aggregates of two cells along each axis; of an odd number the last stands alone. */
const halved = (n: number): number => Math.ceil(n / 2);

/**
 * The network of aggregates, 2 × 2 × 2 cells each: what passes between two aggregates is the sum of what
 * passes between their cells (Galerkin, piecewise constant). Seven points stay seven points, and blocked
 * faces and metal need no care of their own.
 */
export function coarsen(fine: Network): Network {
  const { nx, ny, nz, start, tx, ty, tz, diagonal } = fine;
  const coarse = emptyNetwork(halved(nx), halved(ny), halved(nz));
  const layer = nx * ny;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((j >> 1) + coarse.ny * (k >> 1));
      for (let i = 0; i < nx; i += 1) {
        const n = start + i + nx * (j + ny * k);
        const c = row + (i >> 1);
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
        if ((i & 1) === 1) coarse.tx[c] = (coarse.tx[c] as number) + (tx[n] as number);
        if ((j & 1) === 1) coarse.ty[c] = (coarse.ty[c] as number) + (ty[n] as number);
        if ((k & 1) === 1) coarse.tz[c] = (coarse.tz[c] as number) + (tz[n] as number);
      }
    }
  // rounding leaves crumbs where no metal is
  for (let n = 0; n < coarse.length; n += 1) if ((coarse.diagonal[n] as number) < 0) coarse.diagonal[n] = 0;
  closeNetwork(coarse);
  return coarse;
}

/** Sums what the cells of each aggregate hold. */
export function restrict(fine: Network, coarse: Network, values: Float64Array, sums: Float64Array): void {
  sums.fill(0);
  const { nx, ny, nz, start } = fine;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((j >> 1) + coarse.ny * (k >> 1));
      const from = start + nx * (j + ny * k);
      for (let i = 0; i < nx; i += 1) {
        const c = row + (i >> 1);
        sums[c] = (sums[c] as number) + (values[from + i] as number);
      }
    }
}

/** Adds to each cell what its aggregate holds, times a factor. */
export function prolongate(
  fine: Network,
  coarse: Network,
  values: Float64Array,
  factor: number,
  u: Float64Array,
): void {
  const { nx, ny, nz, start } = fine;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = coarse.start + coarse.nx * ((j >> 1) + coarse.ny * (k >> 1));
      const from = start + nx * (j + ny * k);
      for (let i = 0; i < nx; i += 1)
        u[from + i] = (u[from + i] as number) + factor * (values[row + (i >> 1)] as number);
    }
}
