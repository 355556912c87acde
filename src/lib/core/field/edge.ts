import type { Grid } from './grid.ts';

/*
 * The correction at an edge depends on the sizes of the cells beside it, and was calibrated on exact corner
 * fields. Before, with a fixed share (0.187 of a face), a sheet bare to its edge with an insulated back came
 * out 7 % high, and plates off the grid 2 %. With an insulated back, the extra current goes into the cell
 * behind the plane; the rims of thin boards pass as much. Against far finer grids, eight kinds of edge are
 * off by at most 0.1 % at 1 mm and 0.4 % at 2 mm. A disc remains a staircase of whole cells: we tried parts
 * of cells, and its rim became worse.
 */

/**
 * What a box grid loses where bare metal ends. Near an edge the potential goes as r^λ, and the cell beside
 * the edge passes too little current. An extra conductance from the metal into that cell makes up for it. Its
 * size was calibrated once on the exact corner fields r^λ·sin λθ (λ = ½ at a mask's edge, ¼ at the edge of a
 * sheet with an insulated back, ⅓ at that of a thick plate), so that far from the edge the grid shows no
 * error. The fits below stay within 6 % of that for neighbours that differ by a factor of two.
 */

/**
 * What is beyond the edge: an insulated part of the same plane, or bath beside a plate whose back is bare or
 * insulated.
 */
export type Beyond = 'plane' | 'bareBack' | 'insulatedBack';

/** Sizes of the cells at an edge, m. */
export interface EdgeCells {
  /** of the cell on the metal, along the face, across the edge */
  readonly inner: number;
  /** of the cell beyond the edge, in the same direction */
  readonly outer: number;
  /** of both cells, away from the face */
  readonly depth: number;
  /** of the plate as drawn on the grid */
  readonly thickness: number;
}

/** Gain for cells of equal size: the classical 0.354 of a cell that an edge loses. */
const FLAT = 0.187;
/**
 * Gain into the cell behind the plane of the face, for a sheet, and for a plate at least as thick as a cell.
 */
const BEHIND_SHEET = 0.44;
const BEHIND_PLATE = 0.27;
/** A plate bare on both faces has insulated sides: the thicker it is, the sharper its edges. */
const THICKENS = 0.8;
const THICKEST = 2.4;

const metalCell = (weight: number, { inner, depth }: EdgeCells): number =>
  1 + weight * ((inner / depth) ** 1.5 - 1);

/**
 * The extra conductance, relative to a face of bare metal as large as the outer cell's. It leads into the
 * cell in front of that face. With an insulated back it leads behind the plane instead: the potential there
 * is closer to the bath's, so errors of the share matter less.
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

/** A face beside another in the same plane. */
export interface Neighbour {
  readonly j: number;
  readonly k: number;
  /** row and layer combined into one number */
  readonly key: number;
  /** sizes measured across the line between them, m: of this face and of the neighbour */
  readonly inner: number;
  readonly outer: number;
}

/** The faces above, below, left and right of one. Faces at a wall have fewer. */
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
