import type { Grid } from './grid.ts';

/*
 * What is made good at an edge follows the sizes of the cells beside it, calibrated on exact corner fields.
 * A fixed share (0.187 of a face) left a sheet bare to its edge with an insulated back 7 % high, and plates
 * off the grid 2 %. With an insulated back the lead goes into the cell behind the plane; rims of thin boards
 * let through as much. Eight kinds of edge against far finer grids: at most 0.1 % at 1 mm, 0.4 % at 2 mm. A
 * disc stays a staircase of whole cells: parts of cells were tried and made its rim worse.
 */

/**
 * What a box grid loses where bare metal ends. Near an edge the potential goes as r^λ, and the cell beside
 * it passes too little. An extra way from the metal into that cell makes good for it. How wide it must be
 * was calibrated once on the exact corner fields r^λ·sin λθ (λ = ½ at a mask's edge, ¼ at the edge of a
 * sheet with an insulated back, ⅓ at that of a thick plate), so that the grid's far field bears no trace of
 * the edge; the fits below keep within 6 % of it for neighbours that differ by a factor of two.
 */

/** What lies beyond the edge: the same plane, insulated; or bath, about a plate whose back is bare or not. */
export type Beyond = 'plane' | 'bareBack' | 'insulatedBack';

/** Cells at an edge, m. */
export interface EdgeCells {
  /** the metal's own, along the face, across the edge */
  readonly inner: number;
  /** the one beyond, the same way */
  readonly outer: number;
  /** both, away from the face */
  readonly depth: number;
  /** of the plate, as far as the grid draws it */
  readonly thickness: number;
}

/** Gain between equal cells: the classical 0.354 of a cell that an edge loses. */
const FLAT = 0.187;
/** Into the cell behind the plane of the face, beside a sheet or a plate at least as thick as a cell. */
const BEHIND_SHEET = 0.44;
const BEHIND_PLATE = 0.27;
/** The sides of a plate that is bare on both faces are insulated: the thicker, the sharper its edges. */
const THICKENS = 0.8;
const THICKEST = 2.4;

const metalCell = (weight: number, { inner, depth }: EdgeCells): number =>
  1 + weight * ((inner / depth) ** 1.5 - 1);

/**
 * The extra way's conductance over that of a face of bare metal as large as the outer cell's. It leads into
 * the cell before that face, but behind its plane with an insulated back: there the potential is
 * closer to the bath's, so that less depends on the share.
 */
export function edgeShare(beyond: Beyond, cells: EdgeCells): number {
  const { outer, depth, thickness } = cells;
  const perDepth = depth / outer;
  if (beyond === 'insulatedBack') {
    const gain = thickness === 0 ? BEHIND_SHEET : BEHIND_PLATE * Math.max(1, depth / thickness) ** 0.4;
    return gain * metalCell(0.1, cells) * perDepth;
  }
  const sharper = beyond === 'plane' ? 1 : Math.min(THICKEST, 1 + THICKENS * (thickness / depth) ** 0.6);
  return ((FLAT * metalCell(0.19, cells)) / (0.5 + 0.5 / perDepth)) * perDepth * sharper;
}

/** A face next to another in the same plane. */
export interface Neighbour {
  readonly j: number;
  readonly k: number;
  /** row and layer as one number */
  readonly key: number;
  /** sizes across the line between them, m: this face's and the neighbour's */
  readonly inner: number;
  readonly outer: number;
}

/** The faces above, below and on both sides of one; fewer at the walls. */
export function beside({ y, z }: Grid, j: number, k: number): readonly Neighbour[] {
  const [ny, nz] = [y.sizes.length, z.sizes.length];
  const [wide, high] = [y.sizes[j] as number, z.sizes[k] as number];
  const next = (jj: number, kk: number, inner: number, outer: number | undefined): readonly Neighbour[] =>
    jj < 0 || jj >= ny || kk < 0 || kk >= nz || outer === undefined
      ? []
      : [{ j: jj, k: kk, key: jj + ny * kk, inner, outer }];
  return [
    ...next(j - 1, k, wide, y.sizes[j - 1]),
    ...next(j + 1, k, wide, y.sizes[j + 1]),
    ...next(j, k - 1, high, z.sizes[k - 1]),
    ...next(j, k + 1, high, z.sizes[k + 1]),
  ];
}
