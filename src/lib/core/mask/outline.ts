import type { Mask } from './raster.ts';

export type OutlinePoint = readonly [x: number, y: number];
/** A closed line, mm from the picture's upper left corner. The last point is joined to the first. */
export type Loop = readonly OutlinePoint[];

/** How far the simplified line may be from the traced one, mm: less than a printer can show. */
const SMOOTH = 0.02;

/**
 * Traces closed lines between bare metal and resist, placed between pixel centres by their grey. Filled by
 * the even-odd rule, they give the resist.
 */
export function outlines(mask: Mask): readonly Loop[] {
  const { width, height, perMm, cover, piece } = mask;
  // resist at a pixel, 0 to 255; outside the picture there is none
  const at = (x: number, y: number): number => {
    if (x < 0 || y < 0 || x >= width || y >= height) return 0;
    const n = y * width + x;
    return piece[n] === 0 ? 0 : 255 - (cover[n] as number);
  };
  const wide = width + 1;
  /** where the line crosses an edge of the lattice, by the edge's number: rows first, then columns */
  const across = (x: number, y: number): number => 2 * ((y + 1) * (wide + 1) + x + 1);
  const down = (x: number, y: number): number => across(x, y) + 1;
  const next = new Map<number, number>();
  const LEVEL = 127.5;
  for (let y = -1; y < height; y += 1)
    for (let x = -1; x < width; x += 1) {
      const [a, b, c, d] = [at(x, y), at(x + 1, y), at(x + 1, y + 1), at(x, y + 1)];
      const kind = Number(a > LEVEL) + 2 * Number(b > LEVEL) + 4 * Number(c > LEVEL) + 8 * Number(d > LEVEL);
      if (kind === 0 || kind === 15) continue;
      const [north, east, south, west] = [across(x, y), down(x + 1, y), across(x, y + 1), down(x, y)];
      // the resist is on the right of the line
      const ways: Readonly<Record<number, readonly (readonly [number, number])[]>> = {
        1: [[north, west]],
        2: [[east, north]],
        3: [[east, west]],
        4: [[south, east]],
        5:
          a + b + c + d > 4 * LEVEL
            ? [
                [north, east],
                [south, west],
              ]
            : [
                [north, west],
                [south, east],
              ],
        6: [[south, north]],
        7: [[south, west]],
        8: [[west, south]],
        9: [[north, south]],
        10:
          a + b + c + d > 4 * LEVEL
            ? [
                [west, north],
                [east, south],
              ]
            : [
                [west, south],
                [east, north],
              ],
        11: [[east, south]],
        12: [[west, east]],
        13: [[north, east]],
        14: [[west, north]],
      };
      for (const [from, to] of ways[kind] ?? []) next.set(from, to);
    }
  const placeOf = (edge: number): OutlinePoint => {
    const lattice = edge >> 1;
    const x = (lattice % (wide + 1)) - 1;
    const y = Math.floor(lattice / (wide + 1)) - 1;
    const isAcross = edge % 2 === 0;
    const here = at(x, y);
    const there = isAcross ? at(x + 1, y) : at(x, y + 1);
    const share = (LEVEL - here) / (there - here);
    return isAcross
      ? [(x + 0.5 + share) / perMm, (y + 0.5) / perMm]
      : [(x + 0.5) / perMm, (y + 0.5 + share) / perMm];
  };
  const loops: Loop[] = [];
  for (const start of next.keys()) {
    if (!next.has(start)) continue;
    const loop: OutlinePoint[] = [];
    for (let edge: number | undefined = start; edge !== undefined && next.has(edge);) {
      loop.push(placeOf(edge));
      const to = next.get(edge);
      next.delete(edge);
      edge = to;
    }
    loops.push(simplified(loop));
  }
  return loops.filter(({ length }) => length > 2);
}

/** Leaves out points that are on the line between their neighbours (Douglas and Peucker, 1973). */
function simplified(loop: Loop): Loop {
  if (loop.length < 4) return loop;
  const keep = new Uint8Array(loop.length);
  const half = Math.floor(loop.length / 2);
  keep[0] = 1;
  keep[half] = 1;
  const spans: (readonly [number, number])[] = [
    [0, half],
    [half, loop.length],
  ];
  for (let span = spans.pop(); span !== undefined; span = spans.pop()) {
    const [from, to] = span;
    const [ax, ay] = loop[from] as OutlinePoint;
    const [bx, by] = loop[to % loop.length] as OutlinePoint;
    const length = Math.hypot(bx - ax, by - ay);
    let [far, most] = [-1, SMOOTH];
    for (let n = from + 1; n < to; n += 1) {
      const [x, y] = loop[n] as OutlinePoint;
      const off =
        length === 0
          ? Math.hypot(x - ax, y - ay)
          : Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length;
      if (off > most) [far, most] = [n, off];
    }
    if (far < 0) continue;
    keep[far] = 1;
    spans.push([from, far], [far, to]);
  }
  return loop.filter((_, n) => keep[n] === 1);
}

/**
 * Area inside loops by the even-odd rule, mm². Valid if no loop crosses another; holes run the other way
 * round.
 */
export const loopArea = (loops: readonly Loop[]): number =>
  Math.abs(
    loops.reduce(
      (sum, loop) =>
        sum +
        loop.reduce((part, [x, y], n) => {
          const [u, v] = loop[(n + 1) % loop.length] as OutlinePoint;
          return part + (x * v - u * y) / 2;
        }, 0),
      0,
    ),
  );
