import type { Mask } from './raster.ts';

/*
 * The field sees a drawing as the bare share of cells of a millimetre, in sixteen steps, kept in the job
 * file: lines finer than a cell share the bath before the whole cell's face, and their density is that of
 * the bare metal. Printed codes leave it out, and the sheet says so. A disc's drawing is laid on the square
 * of its area.
 */

/** Bare share of the piece, coarsely: what a cell's field can see of a design. */
export interface Shares {
  readonly columns: number;
  readonly rows: number;
  /** a letter each, 0 for none to f for all, row by row from the piece's foot */
  readonly cells: string;
}

/** Cells along a side at most: finer is nearer than the current can tell. */
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
