import { squaredDistances } from './distance.ts';
import { resistOf } from './mask.ts';
import { narrowest } from './narrowest.ts';
import { partsOf } from './parts.ts';
import type { Mask } from './raster.ts';

/*
 * At an edge, the grey of a pixel tells how much of it is bare: the areas of twenty test shapes are within
 * 0.5 % from 150 dpi up. The thinnest line is the smallest distance along the ridge of an exact distance
 * transform, refined between pixels. Corners are recognised by where the ridge ends. Drawback: a corner much
 * sharper than a right angle counts as a line that narrows.
 */

/** A width, and its position from the picture's upper left corner, mm. */
export interface Narrowest {
  readonly width: number;
  readonly x: number;
  readonly y: number;
}

export interface MeasuredMask {
  /** bare metal, mm²; `error` is one standard deviation */
  readonly area: number;
  readonly error: number;
  /** share of the piece, 0 to 1 */
  readonly share: number;
  /** null where there is none, or when it is as wide as the piece */
  readonly line: Narrowest | null;
  readonly gap: Narrowest | null;
  /** parts of the resist with bare metal all round: they hold only as long as their resist does */
  readonly islands: number;
}

/** Error of an edge's position, pixels: one standard deviation. */
const EDGE = 0.15;

/** Measures the bare area, its share, and the thinnest places of resist and of bare metal. */
export function measure(mask: Mask): MeasuredMask {
  const { width, height, perMm, bare, cover, piece } = mask;
  const resist = resistOf(mask);
  let [covered, edge, whole] = [0, 0, 0];
  for (let n = 0; n < bare.length; n += 1) {
    covered += cover[n] as number;
    whole += piece[n] as number;
    if (n % width > 0 && bare[n] !== bare[n - 1]) edge += 1;
    if (n >= width && bare[n] !== bare[n - width]) edge += 1;
  }
  const pixel = 1 / perMm ** 2;
  const mm = (found: ReturnType<typeof narrowest>): Narrowest | null =>
    found && { width: found.width / perMm, x: found.x / perMm, y: found.y / perMm };
  const isIsland = ([x0, y0, x1, y1]: readonly [number, number, number, number]): boolean =>
    x0 > 0 && y0 > 0 && x1 < width && y1 < height;
  return {
    area: (covered / 255) * pixel,
    // a wrong level moves all edges the same way, so their errors add up
    error: EDGE * edge * pixel,
    share: covered / 255 / whole,
    line: mm(
      narrowest(squaredDistances(resist, width, height), width, height, (n) =>
        piece[n] === 1 ? 255 - (cover[n] as number) : 0,
      ),
    ),
    gap: mm(narrowest(squaredDistances(bare, width, height), width, height, (n) => cover[n] as number)),
    islands: partsOf(resist, width, height).parts.filter(({ box }) => isIsland(box)).length,
  };
}
