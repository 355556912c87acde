import type { Mask } from './raster.ts';

/*
 * For the current distribution, a drawing becomes the bare share of cells of one millimetre, in sixteen
 * steps, and is kept in the job file. When a cell is only partly bare, its current spreads through the bath
 * in front of the whole cell, and the density is that of the bare metal. Printed codes leave the drawing out,
 * and the sheet says so. The drawing of a disc is laid on the square of the same area.
 */

/** Bare share of the piece, cell by cell. */
export interface Shares {
  readonly columns: number;
  readonly rows: number;
  /** one letter for each cell, 0 for none to f for all, row by row from the foot of the piece */
  readonly cells: string;
}

/** Highest number of cells along a side: the current does not show finer detail. */
const MOST = 120;

/** @param side of a cell, mm */
export function sharesOf({ width, height, perMm, cover }: Mask, side = 1): Shares {
  const columns = Math.min(MOST, Math.max(1, Math.round(width / perMm / side)));
  const rows = Math.min(MOST, Math.max(1, Math.round(height / perMm / side)));
  const sum = new Float64Array(columns * rows);
  const count = new Float64Array(columns * rows);
  for (let y = 0; y < height; y += 1) {
    const row = rows - 1 - Math.floor((y * rows) / height);
    for (let x = 0; x < width; x += 1) {
      const n = row * columns + Math.floor((x * columns) / width);
      sum[n] = (sum[n] as number) + (cover[y * width + x] as number);
      count[n] = (count[n] as number) + 1;
    }
  }
  const letter = (share: number): string => Math.round((15 * share) / 255).toString(16);
  return {
    columns,
    rows,
    cells: [...sum].map((one, n) => letter(one / Math.max(1, count[n] as number))).join(''),
  };
}
