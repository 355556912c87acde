import type { Grid } from './grid.ts';
import type { Barriers } from './barriers.ts';

/**
 * A seven-point conductance network on a box of cells. In the arrays x runs fastest. They are padded by one
 * layer at both ends, so that every cell has an index for all its neighbours. A cell holds its conductances
 * to the next cell along x, y and z; these are 0 in the last cell of each row, column and layer.
 */
export interface Network {
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  /** index of the first cell in the arrays */
  readonly start: number;
  /** length of the arrays */
  readonly length: number;
  /** S, to the next cell along each axis */
  readonly tx: Float64Array;
  readonly ty: Float64Array;
  readonly tz: Float64Array;
  /** S, sum of all conductances of a cell, including those to metal */
  readonly diagonal: Float64Array;
  /** 1/diagonal; 0 in a cell without any conductance */
  readonly inverse: Float64Array;
}

export const emptyNetwork = (nx: number, ny: number, nz: number): Network => {
  const start = nx * ny;
  const length = start * (nz + 2);
  const array = (): Float64Array => new Float64Array(length);
  return {
    nx,
    ny,
    nz,
    start,
    length,
    tx: array(),
    ty: array(),
    tz: array(),
    diagonal: array(),
    inverse: array(),
  };
};

/**
 * Adds to each cell's diagonal its conductances to its neighbours. The diagonal must already hold those to
 * metal, S.
 */
export function closeNetwork({ nx, ny, nz, start, tx, ty, tz, diagonal, inverse }: Network): void {
  const layer = nx * ny;
  for (let n = start, end = start + layer * nz; n < end; n += 1) {
    const sum =
      (diagonal[n] as number) +
      (tx[n] as number) +
      (tx[n - 1] as number) +
      (ty[n] as number) +
      (ty[n - nx] as number) +
      (tz[n] as number) +
      (tz[n - layer] as number);
    diagonal[n] = sum;
    inverse[n] = sum > 0 ? 1 / sum : 0;
  }
}

/** Conductances between the cells of a bath, without those to metal. */
export function bathNetwork(grid: Grid, { passes, solid }: Barriers, conductivity: number): Network {
  const [nx, ny, nz] = [grid.x.sizes.length, grid.y.sizes.length, grid.z.sizes.length];
  const network = emptyNetwork(nx, ny, nz);
  const { tx, ty, tz, start } = network;
  const [dx, dy, dz] = [grid.x.sizes, grid.y.sizes, grid.z.sizes];
  const half = (a: number, b: number): number => (a + b) / 2;
  for (let k = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1) {
      const row = nx * (j + ny * k);
      const [wide, high] = [dy[j] as number, dz[k] as number];
      for (let i = 0; i < nx; i += 1) {
        const n = row + i;
        if (solid[n] === 1) continue;
        const deep = dx[i] as number;
        const at = start + n;
        if (i + 1 < nx && solid[n + 1] === 0)
          tx[at] =
            ((passes.get(i + 1)?.[j + ny * k] ?? 1) * conductivity * wide * high) /
            half(deep, dx[i + 1] as number);
        if (j + 1 < ny && solid[n + nx] === 0)
          ty[at] = (conductivity * deep * high) / half(wide, dy[j + 1] as number);
        if (k + 1 < nz && solid[n + nx * ny] === 0)
          tz[at] = (conductivity * deep * wide) / half(high, dz[k + 1] as number);
      }
    }
  return network;
}

/** out = A·u */
export function apply(
  { nx, ny, nz, start, tx, ty, tz, diagonal }: Network,
  u: Float64Array,
  out: Float64Array,
): void {
  const layer = nx * ny;
  for (let n = start, end = start + layer * nz; n < end; n += 1) {
    out[n] =
      (diagonal[n] as number) * (u[n] as number) -
      (tx[n] as number) * (u[n + 1] as number) -
      (tx[n - 1] as number) * (u[n - 1] as number) -
      (ty[n] as number) * (u[n + nx] as number) -
      (ty[n - nx] as number) * (u[n - nx] as number) -
      (tz[n] as number) * (u[n + layer] as number) -
      (tz[n - layer] as number) * (u[n - layer] as number);
  }
}

/** out = f − A·u */
export function residual(network: Network, u: Float64Array, f: Float64Array, out: Float64Array): void {
  apply(network, u, out);
  for (let n = network.start, end = network.length - network.start; n < end; n += 1)
    out[n] = (f[n] as number) - (out[n] as number);
}
