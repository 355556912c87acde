import { averaged } from './evenness.ts';
import type { FaceCurrent } from './solve.ts';

/** How deep one face of a plate is bitten, place by place. */
export interface DepthMap {
  /** edges of columns and rows from the face's lower corner, m */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** bite over the face's mean, row by row upwards; 0 where nothing is bare */
  readonly relative: readonly number[];
}

/** Lines from the cells' centres and sizes, counted from the first. */
function lines(cells: ReadonlyMap<number, number>): readonly number[] {
  const own = [...cells].sort(([a], [b]) => a - b);
  const [first = [0, 0]] = own;
  const start = first[0] - first[1] / 2;
  return [0, ...own.map(([centre, size]) => centre + size / 2 - start)];
}

/**
 * @param faces of one face of one plate, averaged over 2 mm before they are told: nobody reports a depth at
 * an edge
 */
export function depthMapOf(faces: readonly FaceCurrent[]): DepthMap {
  const columns = lines(new Map(faces.map(({ y, width }) => [y, width])));
  const rows = lines(new Map(faces.map(({ z, height }) => [z, height])));
  const means = averaged(faces);
  const area = faces.reduce((sum, face) => sum + face.area, 0);
  const mean = faces.reduce((sum, face, n) => sum + (means[n] as number) * face.area, 0) / area;
  const column = new Map([...new Set(faces.map(({ y }) => y))].sort((a, b) => a - b).map((y, n) => [y, n]));
  const row = new Map([...new Set(faces.map(({ z }) => z))].sort((a, b) => a - b).map((z, n) => [z, n]));
  const relative = new Array<number>(column.size * row.size).fill(0);
  faces.forEach(({ y, z }, n) => {
    const at = (row.get(z) as number) * column.size + (column.get(y) as number);
    relative[at] = (means[n] as number) / mean;
  });
  return { columns, rows, relative };
}

/** A strip of cells of one band, m from the face's lower corner. */
export interface BandRun {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Band {
  /** um; null where the band has no end on that side */
  readonly from: number | null;
  readonly to: number | null;
  /** of the bare area */
  readonly share: number;
  readonly runs: readonly BandRun[];
  /** the middle of its widest runs, where a number may stand */
  readonly at: readonly [x: number, y: number];
}

/** Bands between which a map is drawn: few enough to be told apart. */
const MOST = 6;

/** The round step that cuts a span into at most so many. */
function roundStep(span: number): number {
  const rough = Math.max(span / MOST, 1e-9);
  const ten = 10 ** Math.floor(Math.log10(rough));
  return ten * (([1, 2, 5] as const).find((step) => step * ten >= rough) ?? 10);
}

/** Of the bare cells: what lies beyond on either side is drawn with the outermost band. */
const ENDS = 0.05;

/** Bands of depth, shallowest first, between round numbers. @param mean um */
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
