import type { Mask } from './raster.ts';
import { resistOf } from './mask.ts';

/** A connected part of a design. */
export interface Part {
  /** index of its first pixel, row by row */
  readonly first: number;
  readonly pixels: number;
  /** its bounding box in pixels; the ends are one beyond the last column and row */
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
}

export interface Parts {
  /** number of the part at each pixel, from 1; 0 where there is none */
  readonly labels: Int32Array;
  readonly parts: readonly Part[];
}

/** Connected parts of the `inside` pixels. Touching corners count as connected. */
export function partsOf(inside: Uint8Array, width: number, height: number): Parts {
  const labels = new Int32Array(inside.length);
  const parts: Part[] = [];
  const stack: number[] = [];
  for (let first = 0; first < inside.length; first += 1) {
    if (inside[first] === 0 || labels[first] !== 0) continue;
    const label = parts.length + 1;
    let pixels = 0;
    let [x0, y0, x1, y1] = [width, height, 0, 0];
    labels[first] = label;
    stack.push(first);
    for (let n = stack.pop(); n !== undefined; n = stack.pop()) {
      const x = n % width;
      const y = (n - x) / width;
      pixels += 1;
      x0 = Math.min(x0, x);
      y0 = Math.min(y0, y);
      x1 = Math.max(x1, x + 1);
      y1 = Math.max(y1, y + 1);
      const [left, right] = [x > 0 ? -1 : 0, x + 1 < width ? 1 : 0];
      const [above, below] = [y > 0 ? -1 : 0, y + 1 < height ? 1 : 0];
      for (let dy = above; dy <= below; dy += 1)
        for (let dx = left; dx <= right; dx += 1) {
          const m = n + dy * width + dx;
          if (inside[m] === 0 || labels[m] !== 0) continue;
          labels[m] = label;
          stack.push(m);
        }
    }
    parts.push({ first, pixels, box: [x0, y0, x1, y1] });
  }
  return { labels, parts };
}

/** Parts too small to belong to the design: dust on the picture, or holes in the resist. */
export interface Specks {
  /** small bare places in the resist */
  readonly pinholes: readonly Part[];
  /** small bits of resist on bare metal */
  readonly specks: readonly Part[];
}

/** The middle of a part's bounding box, mm from the upper left corner. */
export const middleOf = ({ box: [x0, y0, x1, y1] }: Part, perMm: number): readonly [x: number, y: number] => [
  (x0 + x1) / 2 / perMm,
  (y0 + y1) / 2 / perMm,
];

/**
 * Finds parts too small to belong to the design and removes them: pinholes are filled, specks become bare.
 * @param least width of the smallest detail of the design, mm: a part with less area than a disc of this
 *   width is a speck
 * @param keep places, mm, of small parts that belong to the design
 */
export function cleaned(
  mask: Mask,
  least: number,
  keep: readonly (readonly [x: number, y: number])[] = [],
): { readonly mask: Mask; readonly specks: Specks } {
  const few = (Math.PI / 4) * (least * mask.perMm) ** 2;
  const bare = mask.bare.slice();
  const cover = mask.cover.slice();
  const isKept = ({ box: [x0, y0, x1, y1] }: Part): boolean =>
    keep.some(([x, y]) => {
      const [u, v] = [x * mask.perMm, y * mask.perMm];
      return u >= x0 && u <= x1 && v >= y0 && v <= y1;
    });
  const small = (inside: Uint8Array, becomes: 0 | 1): readonly Part[] => {
    const { labels, parts } = partsOf(inside, mask.width, mask.height);
    const found = parts.filter(({ pixels }) => pixels < few);
    const goes = new Set(found.filter((part) => !isKept(part)));
    if (goes.size === 0) return found;
    for (let n = 0; n < labels.length; n += 1) {
      const part = parts[(labels[n] as number) - 1];
      if (!part || !goes.has(part)) continue;
      bare[n] = becomes;
      cover[n] = 255 * becomes;
    }
    return found;
  };
  const pinholes = small(mask.bare, 0);
  const specks = small(resistOf(mask), 1);
  return { mask: { ...mask, bare, cover }, specks: { pinholes, specks } };
}

/** How far a kept place may be from the speck it was put on, mm: two of the finest pixels. */
const BESIDE = 0.02;

/**
 * Whether a kept place belongs to a speck. @param speck its middle, and the width of a disc of its area, mm
 */
export const isPlaceOf = (
  speck: { readonly x: number; readonly y: number; readonly width: number },
  [x, y]: readonly [x: number, y: number],
): boolean => Math.hypot(speck.x - x, speck.y - y) <= speck.width / 2 + BESIDE;
