import type { Grey, PictureFault } from './raster.ts';

export type Point = readonly [x: number, y: number];
/** Corners of a rectangle in its picture: upper left, upper right, lower right, lower left. */
export type Corners = readonly [Point, Point, Point, Point];

const turn = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Smallest area that four tapped corners may enclose, pixels. */
const LEAST_AREA = 400;

/** Why four points cannot be the corners of a rectangle; null when they can. */
export function cornersFault([a, b, c, d]: Corners): PictureFault | null {
  const turns = [turn(a, b, c), turn(b, c, d), turn(c, d, a), turn(d, a, b)];
  if (turns.some((one) => one <= 0)) return { id: 'crossed' };
  return (turn(a, b, c) + turn(a, c, d)) / 2 < LEAST_AREA ? { id: 'flat' } : null;
}

/** Solves m·x = v by elimination. Changes m. */
function solved(m: number[][], v: number[]): number[] {
  const n = v.length;
  for (let i = 0; i < n; i += 1) {
    let pivot = i;
    for (let k = i + 1; k < n; k += 1)
      if (Math.abs(m[k]?.[i] as number) > Math.abs(m[pivot]?.[i] as number)) pivot = k;
    [m[i], m[pivot]] = [m[pivot] as number[], m[i] as number[]];
    [v[i], v[pivot]] = [v[pivot] as number, v[i] as number];
    const own = m[i] as number[];
    for (let k = i + 1; k < n; k += 1) {
      const row = m[k] as number[];
      const factor = (row[i] as number) / (own[i] as number);
      for (let j = i; j < n; j += 1) row[j] = (row[j] as number) - factor * (own[j] as number);
      v[k] = (v[k] as number) - factor * (v[i] as number);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i -= 1) {
    const row = m[i] as number[];
    const rest = row.slice(i + 1).reduce((sum, one, k) => sum + one * (x[i + 1 + k] as number), 0);
    x[i] = ((v[i] as number) - rest) / (row[i] as number);
  }
  return x;
}

const rectangle = (width: number, height: number): Corners => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** The perspective that maps four points to four others. */
export function homography(from: Corners, onto: Corners): (x: number, y: number) => Point {
  const rows: number[][] = [];
  const right: number[] = [];
  from.forEach(([x, y], n) => {
    const [u, v] = onto[n] as Point;
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]);
    right.push(u, v);
  });
  const [a, b, c, d, e, f, g, h] = solved(rows, right) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return (x, y) => {
    const w = g * x + h * y + 1;
    return [(a * x + b * y + c) / w, (d * x + e * y + f) / w];
  };
}

/**
 * Where a point of the flat rectangle is seen in the picture.
 * @param width,height of the flat rectangle whose corners were tapped
 */
export const viewOf = (corners: Corners, width: number, height: number): ((x: number, y: number) => Point) =>
  homography(rectangle(width, height), corners);

/**
 * Corners of a piece that lies flat beside a rectangle of known size.
 * @param known corners of that rectangle in the picture, pixels; it may lie on its side
 * @param sides of the rectangle, mm, the longer first
 * @param edge upper corners of the piece in the picture, left and right, pixels
 * @param width,height of the piece, mm
 * @returns its corners in the picture, and its width as measured in the picture, mm
 */
export function cornersBeside(
  known: Corners,
  sides: readonly [long: number, short: number],
  edge: readonly [Point, Point],
  width: number,
  height: number,
): { readonly corners: Corners; readonly across: number } {
  const [a, b, c, d] = known;
  const away = (p: Point, q: Point): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const isUpright = away(a, b) + away(d, c) < away(a, d) + away(b, c);
  const flat = isUpright ? rectangle(sides[1], sides[0]) : rectangle(...sides);
  const toFlat = homography(known, flat);
  const toPicture = homography(flat, known);
  const [left, right] = [toFlat(...edge[0]), toFlat(...edge[1])];
  const across = away(left, right);
  const along: Point = [(right[0] - left[0]) / across, (right[1] - left[1]) / across];
  const at = (x: number, y: number): Point =>
    toPicture(left[0] + x * along[0] - y * along[1], left[1] + x * along[1] + y * along[0]);
  return { corners: [at(0, 0), at(width, 0), at(width, height), at(0, height)], across };
}

/**
 * Removes the perspective from a picture.
 * @param corners of a rectangle of known size in the picture, pixels
 * @param width,height of that rectangle in the flat picture, pixels; everything outside it is cut off
 */
export function squared(picture: Grey, corners: Corners, width: number, height: number): Grey {
  const view = viewOf(corners, width, height);
  const data = new Uint8Array(width * height);
  const at = (x: number, y: number): number =>
    picture.data[
      Math.min(picture.height - 1, Math.max(0, y)) * picture.width +
        Math.min(picture.width - 1, Math.max(0, x))
    ] as number;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const [u, v] = view(x + 0.5, y + 0.5);
      const [i, j] = [Math.floor(u - 0.5), Math.floor(v - 0.5)];
      const [fx, fy] = [u - 0.5 - i, v - 0.5 - j];
      data[y * width + x] = Math.round(
        (1 - fy) * ((1 - fx) * at(i, j) + fx * at(i + 1, j)) +
          fy * ((1 - fx) * at(i, j + 1) + fx * at(i + 1, j + 1)),
      );
    }
  return { width, height, data };
}
