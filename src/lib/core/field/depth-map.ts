import { averaged } from './evenness.ts';
import type { Rect } from './problem.ts';
import type { FaceCurrent } from './solve.ts';

/** How deep one face of a plate is bitten, cell by cell. */
export interface DepthMap {
  /** edges of columns and rows, measured from the face's lower corner, m */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** bite over the mean of the face, row by row upwards; 0 where no metal is bare */
  readonly relative: readonly number[];
}

/** Lines closer together than this, m, count as one. */
const SAME = 1e-9;

/**
 * Edges of cells from side to side, and the index of each cell by its centre. Gaps without bare metal are
 * cells too.
 */
function lines(
  cells: ReadonlyMap<number, number>,
  from: number,
  to: number,
): { readonly edges: readonly number[]; readonly places: ReadonlyMap<number, number> } {
  const edges = [0];
  const places = new Map<number, number>();
  const reach = (edge: number): void => {
    if (edge > (edges.at(-1) ?? 0) + SAME) edges.push(edge);
  };
  for (const [centre, size] of [...cells].sort(([a], [b]) => a - b)) {
    reach(centre - size / 2 - from);
    places.set(centre, edges.length - 1);
    reach(centre + size / 2 - from);
  }
  reach(to - from);
  return { edges, places };
}

/**
 * @param faces bare faces of one side of one plate. The map averages them over 2 mm, because nobody measures
 *   a depth right at an edge.
 * @param outline of that plate
 */
export function depthMapOf(faces: readonly FaceCurrent[], outline: Rect): DepthMap {
  const { edges: columns, places: column } = lines(
    new Map(faces.map(({ y, width }) => [y, width])),
    outline.y0,
    outline.y1,
  );
  const { edges: rows, places: row } = lines(
    new Map(faces.map(({ z, height }) => [z, height])),
    outline.z0,
    outline.z1,
  );
  const means = averaged(faces);
  const area = faces.reduce((sum, face) => sum + face.area, 0);
  const mean = faces.reduce((sum, face, n) => sum + (means[n] as number) * face.area, 0) / area;
  const wide = columns.length - 1;
  const relative = new Array<number>(wide * (rows.length - 1)).fill(0);
  faces.forEach(({ y, z }, n) => {
    const at = (row.get(z) as number) * wide + (column.get(y) as number);
    // plans are stored: more digits than can be measured only take space
    relative[at] = Math.round(1e4 * ((means[n] as number) / mean)) / 1e4;
  });
  return { columns, rows, relative };
}

/** Depth along a line across the face, cell by cell, m from its left; relative as in the map. */
export interface Profile {
  /** height of the line above the foot, m */
  readonly at: number;
  readonly steps: readonly { readonly from: number; readonly to: number; readonly relative: number }[];
}

/**
 * The depth along one row: of those with the most bare metal, the one nearest the middle. A section there
 * shows most.
 */
export function profileOf({ columns, rows, relative }: DepthMap): Profile {
  const wide = columns.length - 1;
  const middle = (rows.at(-1) ?? 0) / 2;
  const rowsBy = rows.slice(1).map((edge, j) => {
    const own = relative.slice(j * wide, (j + 1) * wide);
    const at = (edge + (rows[j] as number)) / 2;
    return { at, own, bare: own.filter((one) => one > 0).length };
  });
  const most = Math.max(...rowsBy.map(({ bare }) => bare));
  const [best] = rowsBy
    .filter(({ bare }) => bare >= 0.9 * most)
    .sort((a, b) => Math.abs(a.at - middle) - Math.abs(b.at - middle));
  return {
    at: best?.at ?? 0,
    steps: (best?.own ?? []).map((one, i) => ({
      from: columns[i] as number,
      to: columns[i + 1] as number,
      relative: one,
    })),
  };
}

/** A strip of cells in one band, m from the face's lower corner. */
export interface BandRun {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Band {
  /** um; null where the band is open on that side */
  readonly from: number | null;
  readonly to: number | null;
  /** share of the bare area */
  readonly share: number;
  readonly runs: readonly BandRun[];
  /** the middle of one of its widest strips, where a number has room */
  readonly at: readonly [x: number, y: number];
}

/** How many bands a map may have at most, so that they can be told apart. */
const MOST = 6;

/** The round step that cuts a span into at most `MOST` bands. */
function roundStep(span: number): number {
  const rough = Math.max(span / MOST, 1e-9);
  const ten = 10 ** Math.floor(Math.log10(rough));
  return ten * (([1, 2, 5] as const).find((step) => step * ten >= rough) ?? 10);
}

/** Share of the bare cells at either end of the depths that is drawn with the outermost band. */
const ENDS = 0.05;

/** Bands of depth between round numbers, shallowest first. @param mean um */
export function bandsOf({ columns, rows, relative }: DepthMap, mean: number): readonly Band[] {
  const bare = relative.filter((one) => one > 0).toSorted((a, b) => a - b);
  if (bare.length === 0) return [];
  const end = Math.floor(ENDS * (bare.length - 1));
  const [low, high] = [(bare.at(end) ?? 0) * mean, (bare.at(-1 - end) ?? 0) * mean];
  const step = roundStep(high - low);
  const bandOf = (depth: number): number => Math.floor(depth / step + 1e-9);
  const [first, last] = [bandOf(low), bandOf(high)];
  const wide = columns.length - 1;
  const bands = new Map<number, { runs: BandRun[]; area: number }>();
  let whole = 0;
  for (let j = 0; j < rows.length - 1; j += 1)
    for (let i = 0, start = 0; i < wide; i += 1) {
      const bandAt = (column: number): number => {
        const one = column < wide ? (relative[j * wide + column] as number) : 0;
        return one === 0 ? -1 : Math.min(last, Math.max(first, bandOf(one * mean)));
      };
      const band = bandAt(i);
      if (bandAt(i + 1) === band) continue;
      const [x, y] = [columns[start] as number, rows[j] as number];
      const run = { x, y, width: (columns[i + 1] as number) - x, height: (rows[j + 1] as number) - y };
      start = i + 1;
      if (band < 0) continue;
      const own = bands.get(band) ?? { runs: [], area: 0 };
      own.runs.push(run);
      own.area += run.width * run.height;
      whole += run.width * run.height;
      bands.set(band, own);
    }
  return [...bands]
    .sort(([a], [b]) => a - b)
    .map(([band, { runs, area }]) => {
      const most = Math.max(...runs.map(({ width }) => width));
      const wide = runs.filter(({ width }) => width > 0.99 * most);
      const widest = wide[Math.floor(wide.length / 2)] as BandRun;
      return {
        from: band === first ? null : band * step,
        to: band === last ? null : (band + 1) * step,
        share: area / whole,
        runs,
        at: [widest.x + widest.width / 2, widest.y + widest.height / 2],
      };
    });
}
