import type { Network } from './operator.ts';

/** One sweep of Gauss–Seidel, from the first cell to the last. */
export function sweepForward(
  { nx, ny, nz, start, tx, ty, tz, inverse }: Network,
  u: Float64Array,
  f: Float64Array,
): void {
  const layer = nx * ny;
  for (let n = start, end = start + layer * nz; n < end; n += 1) {
    u[n] =
      ((f[n] as number) +
        (tx[n] as number) * (u[n + 1] as number) +
        (tx[n - 1] as number) * (u[n - 1] as number) +
        (ty[n] as number) * (u[n + nx] as number) +
        (ty[n - nx] as number) * (u[n - nx] as number) +
        (tz[n] as number) * (u[n + layer] as number) +
        (tz[n - layer] as number) * (u[n - layer] as number)) *
      (inverse[n] as number);
  }
}

/** One sweep from the last cell to the first. A forward and a backward sweep together are symmetric. */
export function sweepBackward(
  { nx, ny, nz, start, tx, ty, tz, inverse }: Network,
  u: Float64Array,
  f: Float64Array,
): void {
  const layer = nx * ny;
  for (let n = start + layer * nz - 1; n >= start; n -= 1) {
    u[n] =
      ((f[n] as number) +
        (tx[n] as number) * (u[n + 1] as number) +
        (tx[n - 1] as number) * (u[n - 1] as number) +
        (ty[n] as number) * (u[n + nx] as number) +
        (ty[n - nx] as number) * (u[n - nx] as number) +
        (tz[n] as number) * (u[n + layer] as number) +
        (tz[n - layer] as number) * (u[n - layer] as number)) *
      (inverse[n] as number);
  }
}
