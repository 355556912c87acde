import type { Mask } from './raster.ts';
import { resistOf } from './mask.ts';

/** A connected part of a design. */
export interface Part {
  /** its first pixel, row by row */
  readonly first: number;
  readonly pixels: number;
  /** its box, pixels: columns and rows, the ends beyond the last */
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
}

export interface Parts {
  /** number of its part at each pixel, from 1; 0 where there is none */
  readonly labels: Int32Array;
  readonly parts: readonly Part[];
}

/** Connected parts of what is `inside`, by edges and corners alike. */
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
      for (let dy = -1; dy <= 1; dy += 1)
        for (let dx = -1; dx <= 1; dx += 1) {
          const m = n + dy * width + dx;
          const inRow = x + dx >= 0 && x + dx < width && y + dy >= 0 && y + dy < height;
          if (!inRow || inside[m] === 0 || labels[m] !== 0) continue;
          labels[m] = label;
          stack.push(m);
        }
    }
    parts.push({ first, pixels, box: [x0, y0, x1, y1] });
  }
  return { labels, parts };
}

/** Parts smaller than can be meant: dust on the picture, or holes in the resist. */
export interface Specks {
  /** small bare places in the resist */
  readonly pinholes: readonly Part[];
  /** small bits of resist on bare metal */
  readonly specks: readonly Part[];
}

/** @param least width of the smallest thing that is meant, mm: what has less area than a disc so wide is a speck */
export function specksOf(mask: Mask, least: number): Specks {
  const few = (Math.PI / 4) * (least * mask.perMm) ** 2;
  const small = (inside: Uint8Array): readonly Part[] =>
    partsOf(inside, mask.width, mask.height).parts.filter(({ pixels }) => pixels < few);
  return { pinholes: small(mask.bare), specks: small(resistOf(mask)) };
}

/** Fills pinholes with resist, and takes specks away. */
export function cleaned(mask: Mask, least: number): Mask {
  const few = (Math.PI / 4) * (least * mask.perMm) ** 2;
  const bare = mask.bare.slice();
  const cover = mask.cover.slice();
  for (const [inside, becomes] of [
    [mask.bare, 0],
    [resistOf(mask), 1],
  ] as const) {
    const { labels, parts } = partsOf(inside, mask.width, mask.height);
    for (let n = 0; n < labels.length; n += 1) {
      const part = parts[(labels[n] as number) - 1];
      if (!part || part.pixels >= few) continue;
      bare[n] = becomes;
      cover[n] = 255 * becomes;
    }
  }
  return { ...mask, bare, cover };
}
