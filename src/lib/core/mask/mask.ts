import type { Point } from './perspective.ts';
import type { Grey, Mask } from './raster.ts';
import { histogramOf, tonesOf } from './threshold.ts';

/**
 * Outline of the piece in its picture. A rectangle or disc fills the picture; a traced outline is a list of
 * points, each in shares of the picture's sides.
 */
export type Outline = 'rectangle' | 'disc' | readonly Point[];

/** The pixels whose centres are within a traced outline. */
function traced(width: number, height: number, points: readonly Point[]): Uint8Array {
  const piece = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const level = (y + 0.5) / height;
    const crossings = points
      .flatMap(([x0, y0], n) => {
        const [x1, y1] = points[(n + 1) % points.length] as Point;
        return y0 > level === y1 > level ? [] : [x0 + ((level - y0) / (y1 - y0)) * (x1 - x0)];
      })
      .sort((a, b) => a - b);
    for (let n = 0; n + 1 < crossings.length; n += 2) {
      const first = Math.max(0, Math.ceil((crossings[n] as number) * width - 0.5));
      const end = Math.min(width, Math.ceil((crossings[n + 1] as number) * width - 0.5));
      piece.fill(1, y * width + first, y * width + Math.max(first, end));
    }
  }
  return piece;
}

function pieceOf(width: number, height: number, outline: Outline): Uint8Array {
  if (typeof outline === 'object') return traced(width, height, outline);
  const piece = new Uint8Array(width * height).fill(1);
  if (outline === 'rectangle') return piece;
  const [a, b] = [width / 2, height / 2];
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      if (((x + 0.5 - a) / a) ** 2 + ((y + 0.5 - b) / b) ** 2 > 1) piece[y * width + x] = 0;
  return piece;
}

/** Whether one of the four pixels next to this one is of the other kind. */
function isEdge(bare: Uint8Array, width: number, height: number, x: number, y: number): boolean {
  const n = y * width + x;
  const own = bare[n];
  return (
    (x > 0 && bare[n - 1] !== own) ||
    (x + 1 < width && bare[n + 1] !== own) ||
    (y > 0 && bare[n - width] !== own) ||
    (y + 1 < height && bare[n + width] !== own)
  );
}

/**
 * Divides a picture into bare metal and resist.
 * @param level greys up to this are dark
 * @param darkIs what dark means: resist in most drawings, bare metal in some
 * @param perMm pixels in a millimetre
 */
export function maskOf(
  { width, height, data }: Grey,
  level: number,
  darkIs: 'resist' | 'bare',
  perMm: number,
  outline: Outline = 'rectangle',
): Mask {
  const [dark, light] = tonesOf(histogramOf(data), level);
  const piece = pieceOf(width, height, outline);
  const bare = new Uint8Array(data.length);
  const cover = new Uint8Array(data.length);
  for (let n = 0; n < data.length; n += 1)
    bare[n] = Number(piece[n] === 1 && (darkIs === 'resist') === (data[n] as number) > level);
  const half = Math.max(1, Math.min(level + 0.5 - dark, light - level - 0.5));
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const n = y * width + x;
      if (piece[n] === 0) continue;
      // at an edge, the grey of a pixel tells which share of it is bare; elsewhere its shades are noise
      if (!isEdge(bare, width, height, x, y)) cover[n] = 255 * (bare[n] as number);
      else {
        const lit = Math.min(1, Math.max(0, 0.5 + ((data[n] as number) - level - 0.5) / (2 * half)));
        cover[n] = Math.round(255 * (darkIs === 'resist' ? lit : 1 - lit));
      }
    }
  return { width, height, perMm, bare, cover, piece };
}

/** The mask with bare metal and resist exchanged. */
export function inverted(mask: Mask): Mask {
  const { piece } = mask;
  return {
    ...mask,
    bare: mask.bare.map((one, n) => (piece[n] === 1 ? 1 - one : 0)),
    cover: mask.cover.map((one, n) => (piece[n] === 1 ? 255 - one : 0)),
  };
}

/** 1 where the piece is under resist. */
export function resistOf({ bare, piece }: Mask): Uint8Array {
  const resist = new Uint8Array(bare.length);
  for (let n = 0; n < resist.length; n += 1) resist[n] = Number(bare[n] === 0 && piece[n] === 1);
  return resist;
}

/** The same piece with other bare pixels, each of them all bare or all covered. */
export function withBare(mask: Mask, bare: Uint8Array): Mask {
  const cover = new Uint8Array(bare.length);
  for (let n = 0; n < cover.length; n += 1) cover[n] = 255 * (bare[n] as number);
  return { ...mask, bare, cover };
}
