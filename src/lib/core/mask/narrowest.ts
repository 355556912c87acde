import { FAR } from './distance.ts';

/** A width and the middle of that place, pixels. */
export interface Narrowest {
  readonly width: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Where the distance along a ridge rises by more than this per pixel, the ridge may end in a tip. A right
 * angle gives 0.71.
 */
const TAPER = 0.15;
/** Radius within which the rise is measured, pixels. */
const REACH = 9;
/** How much farther to look for the tip than the point where the width would reach 0. */
const BEYOND = 1.3;

const opposite = [
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
] as const;

/** Steps of the search for the middle, and how far from the start it may move, pixels. */
const STEPS = [0.5, 0.25, 0.1, 0.05] as const;
const DRIFT = 0.7;

/**
 * Refines a width to fractions of a pixel. The shares of the pixels tell where the edge is, and the width is
 * that of the largest disc near this place that touches no edge.
 */
function refined(
  x: number,
  y: number,
  depth: number,
  width: number,
  height: number,
  share: (n: number) => number,
): Narrowest {
  const edges: number[] = [];
  const reach = Math.ceil(depth + DRIFT + 2);
  const at = (i: number, j: number): number =>
    i < 0 || j < 0 || i >= width || j >= height ? NaN : share(j * width + i) / 255;
  const cross = (i: number, j: number, di: number, dj: number): void => {
    const [a, b] = [at(i, j), at(i + di, j + dj)];
    // outside the picture there are no edges, because nothing is known there
    if (!(a > 0.5 !== b > 0.5) || Number.isNaN(a) || Number.isNaN(b)) return;
    const part = (a - 0.5) / (a - b);
    edges.push(i + 0.5 + part * di, j + 0.5 + part * dj);
  };
  for (let j = Math.floor(y) - reach; j <= y + reach; j += 1)
    for (let i = Math.floor(x) - reach; i <= x + reach; i += 1) {
      cross(i, j, 1, 0);
      cross(i, j, 0, 1);
    }
  const room = (u: number, v: number): number => {
    let least = Infinity;
    for (let n = 0; n < edges.length; n += 2)
      least = Math.min(least, ((edges[n] as number) - u) ** 2 + ((edges[n + 1] as number) - v) ** 2);
    return least;
  };
  let [u, v, most] = [x, y, room(x, y)];
  for (const step of STEPS)
    for (let moved = true; moved;) {
      moved = false;
      for (const [du, dv] of [...opposite, ...opposite.map(([a, b]) => [-a, -b] as const)]) {
        const [a, b] = [u + step * du, v + step * dv];
        if (Math.hypot(a - x, b - y) > DRIFT) continue;
        const there = room(a, b);
        if (there > most + 1e-9) [u, v, most, moved] = [a, b, there, true];
      }
    }
  return { width: 2 * Math.sqrt(most), x: u, y: v };
}

/**
 * Where the `inside` pixels are narrowest: along the ridge of their distances, without tips.
 * @param squared distances to the outside, of the same size
 * @param share of a pixel that is inside, 0 to 255
 * @returns pixels; null when nothing is inside
 */
export function narrowest(
  squared: Int32Array,
  width: number,
  height: number,
  share: (n: number) => number,
): Narrowest | null {
  let [best, at] = [Infinity, -1];
  const value = (x: number, y: number): number =>
    x < 0 || y < 0 || x >= width || y >= height ? -1 : (squared[y * width + x] as number);
  /** true where the ridge rises in one direction and ends in the other: such a tip is no narrow place */
  const isTip = (x: number, y: number, depth: number): boolean => {
    let [rise, ux, uy] = [0, 0, 0];
    for (let dy = -REACH; dy <= REACH; dy += 1)
      for (let dx = -REACH; dx <= REACH; dx += 1) {
        const away = Math.hypot(dx, dy);
        const there = value(x + dx, y + dy);
        if (away === 0 || away > REACH || there <= 0) continue;
        const slope = (Math.sqrt(there) - depth) / away;
        if (slope > rise) [rise, ux, uy] = [slope, dx / away, dy / away];
      }
    if (rise < TAPER) return false;
    for (let away = 1; away <= (BEYOND * depth) / rise + 2; away += 1)
      if (value(Math.round(x - ux * away), Math.round(y - uy * away)) === 0) return true;
    return false;
  };
  for (let y = 0, n = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1, n += 1) {
      const own = squared[n] as number;
      if (own === 0 || own >= best || own >= FAR) continue;
      const isRidge = opposite.some(([dx, dy]) => {
        const [a, b] = [value(x - dx, y - dy), value(x + dx, y + dy)];
        // the border of the picture is no edge
        return a >= 0 && b >= 0 && a <= own && b <= own && (a < own || b < own);
      });
      if (!isRidge || isTip(x, y, Math.sqrt(own))) continue;
      best = own;
      at = n;
    }
  if (at < 0) return null;
  const [x, y] = [(at % width) + 0.5, Math.floor(at / width) + 0.5];
  return refined(x, y, Math.sqrt(best), width, height, share);
}
