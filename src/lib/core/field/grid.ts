import type { Bare, FieldProblem, Plate } from './problem.ts';

/** One axis, cut into cells. */
export interface Axis {
  /** edges of the cells, one more than there are cells, m */
  readonly lines: Float64Array;
  readonly sizes: Float64Array;
  readonly centres: Float64Array;
  /** 1 at lines where a plate or a part of a mask begins or ends */
  readonly fixed: Uint8Array;
}

export interface Grid {
  readonly x: Axis;
  readonly y: Axis;
  readonly z: Axis;
  readonly cells: number;
}

/**
 * Lines closer together than this share of a cell become one, midway: a sliver of a cell would cost more time
 * than it improves the result.
 */
const NEAR = 1 / 8;

/** Sizes of cells that grow away from the fine ends of a stretch, scaled to fill it exactly. */
function graded(length: number, spacing: number, growth: number, fineEnds: number): readonly number[] {
  const count = Math.max(1, Math.ceil(length / spacing - 1e-6));
  if (growth <= 1 || fineEnds === 0 || count < 3) return Array.from({ length: count }, () => length / count);
  const half = length / fineEnds;
  const sizes: number[] = [];
  for (let sum = 0, size = spacing; sum < half - 1e-9; size *= growth) {
    sizes.push(size);
    sum += size;
  }
  const whole = fineEnds === 2 ? [...sizes, ...sizes.toReversed()] : sizes;
  const scale = length / whole.reduce((sum, size) => sum + size, 0);
  return whole.map((size) => size * scale);
}

/**
 * Cuts 0…length into cells so that there is a line at each stop.
 * @param stops where something begins or ends, m
 */
function axis(length: number, stops: readonly number[], spacing: number, growth: number): Axis {
  const near = spacing * NEAR;
  const inside = stops.filter((stop) => stop > near && stop < length - near).toSorted((a, b) => a - b);
  const together: number[][] = [];
  for (const stop of inside) {
    const last = together.at(-1);
    if (last && stop - (last[0] as number) < near) last.push(stop);
    else together.push([stop]);
  }
  const middles = together.map((own) => own.reduce((sum, stop) => sum + stop, 0) / own.length);
  const ends = [0, ...middles, length];
  const isFine = (n: number): boolean =>
    (n > 0 && n < ends.length - 1) || stops.some((stop) => Math.abs(stop - (ends[n] as number)) <= near);
  const sizes = ends.slice(1).flatMap((end, n) => {
    const start = ends[n] as number;
    const [low, high] = [isFine(n), isFine(n + 1)];
    const cells = graded(end - start, spacing, growth, Number(low) + Number(high));
    return high && !low ? cells.toReversed() : cells;
  });
  const lines = new Float64Array(sizes.length + 1);
  sizes.forEach((size, i) => {
    lines[i + 1] = (lines[i] as number) + size;
  });
  const fixed = Uint8Array.from(lines, (line) => Number(ends.some((end) => Math.abs(end - line) < 1e-9)));
  return {
    lines,
    fixed,
    sizes: Float64Array.from(sizes),
    centres: Float64Array.from(sizes, (size, i) => (lines[i] as number) + size / 2),
  };
}

/** Where the bare parts of a mask begin and end. */
function stopsOf({ outline }: Plate, bare: Bare): { y: number[]; z: number[] } {
  if (bare.kind === 'rects')
    return {
      y: bare.rects.flatMap(({ y0, y1 }) => [y0, y1]),
      z: bare.rects.flatMap(({ z0, z1 }) => [z0, z1]),
    };
  if (bare.kind === 'disc')
    return {
      y: [bare.y - bare.radius, bare.y + bare.radius],
      z: [bare.z - bare.radius, bare.z + bare.radius],
    };
  return { y: [outline.y0, outline.y1], z: [outline.z0, outline.z1] };
}

/** A box grid with a line at every edge of a plate or mask. */
export function gridOf({ box, plates, spacing, growth = 1 }: FieldProblem): Grid {
  const masks = plates.flatMap((plate) =>
    Object.values(plate.bare)
      .filter(({ kind }) => kind !== 'none')
      .map((bare) => stopsOf(plate, bare)),
  );
  const outlines = plates.map(({ outline }) => outline);
  const x = axis(
    box.length,
    plates.flatMap(({ x: at, thickness, mask = 0 }) => [
      at - mask,
      at,
      at + thickness,
      at + thickness + mask,
    ]),
    spacing,
    growth,
  );
  const y = axis(
    box.width,
    [...outlines.flatMap(({ y0, y1 }) => [y0, y1]), ...masks.flatMap((mask) => mask.y)],
    spacing,
    growth,
  );
  const z = axis(
    box.fill,
    [...outlines.flatMap(({ z0, z1 }) => [z0, z1]), ...masks.flatMap((mask) => mask.z)],
    spacing,
    growth,
  );
  return { x, y, z, cells: x.sizes.length * y.sizes.length * z.sizes.length };
}

/** Index of the line nearest to a position. */
export function lineAt({ lines }: Axis, place: number): number {
  let best = 0;
  for (let i = 1; i < lines.length; i += 1)
    if (Math.abs((lines[i] as number) - place) < Math.abs((lines[best] as number) - place)) best = i;
  return best;
}
