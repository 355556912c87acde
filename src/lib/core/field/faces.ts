import type { Axis, Grid } from './grid.ts';
import { lineAt } from './grid.ts';
import type { Bare, Electrode, Plate, Rect, ElectrodeSide } from './problem.ts';

/** A face of a cell that touches bare metal. */
export interface BareFace {
  /** of the problem's plates */
  readonly plate: number;
  readonly electrode: Electrode;
  readonly side: ElectrodeSide;
  /** its cell: column, row, layer */
  readonly i: number;
  readonly j: number;
  readonly k: number;
  /** area of bare metal, m² */
  readonly area: number;
  /** bare share of the face, 0 to 1 */
  readonly bareShare: number;
  /** from the metal to the cell's centre, m */
  readonly depth: number;
}

/** A plate on the grid: the lines of its faces, and the rows and layers of its outline. */
export interface Placed {
  readonly plate: Plate;
  /** of the problem's plates */
  readonly n: number;
  readonly lines: Readonly<Record<ElectrodeSide, number>>;
  /** cells of thick resist on a side: columns, from and to */
  readonly resist: Readonly<Record<ElectrodeSide, readonly [number, number]>>;
  readonly rows: readonly [number, number];
  readonly layers: readonly [number, number];
  /** bare share of a cell's face, 0 to 255, by row and layer of the whole grid */
  readonly bare: Readonly<Record<ElectrodeSide, Uint8Array>>;
}

/** A bare share smaller than this, of 255, is ignored. */
const LEAST = 8;

/** Bare share of a plate's face at one point, 0 to 255. */
function bareAt({ outline }: Plate, bare: Bare, y: number, z: number): number {
  const inside = ({ y0, y1, z0, z1 }: Rect): boolean => y > y0 && y < y1 && z > z0 && z < z1;
  if (bare.kind === 'none') return 0;
  if (bare.kind === 'all') return 255;
  if (bare.kind === 'rects') return bare.rects.some(inside) ? 255 : 0;
  if (bare.kind === 'disc') return Math.hypot(y - bare.y, z - bare.z) < bare.radius ? 255 : 0;
  const column = Math.floor(((y - outline.y0) / (outline.y1 - outline.y0)) * bare.columns);
  const row = Math.floor(((z - outline.z0) / (outline.z1 - outline.z0)) * bare.rows);
  const share = bare.cells[row * bare.columns + column] ?? 0;
  return share < LEAST ? 0 : share;
}

const span = (of: Axis, from: number, to: number): readonly [number, number] => [
  lineAt(of, from),
  lineAt(of, to),
];

/** Fits a plate to the grid's lines. @param n its index among the problem's plates */
export function placed(plate: Plate, n: number, grid: Grid): Placed {
  const { x, thickness, mask = 0, outline } = plate;
  const [front, back] = span(grid.x, x, x + thickness);
  const rows = span(grid.y, outline.y0, outline.y1);
  const layers = span(grid.z, outline.z0, outline.z1);
  const ny = grid.y.sizes.length;
  const bareOn = (side: ElectrodeSide): Uint8Array => {
    const map = new Uint8Array(ny * grid.z.sizes.length);
    const i = side === 'minus' ? front - 1 : back;
    if (i < 0 || i >= grid.x.sizes.length) return map;
    for (let k = layers[0]; k < layers[1]; k += 1)
      for (let j = rows[0]; j < rows[1]; j += 1)
        map[j + ny * k] = bareAt(
          plate,
          plate.bare[side],
          grid.y.centres[j] as number,
          grid.z.centres[k] as number,
        );
    return map;
  };
  return {
    plate,
    n,
    lines: { minus: front, plus: back },
    resist: { minus: [lineAt(grid.x, x - mask), front], plus: [back, lineAt(grid.x, x + thickness + mask)] },
    rows,
    layers,
    bare: { minus: bareOn('minus'), plus: bareOn('plus') },
  };
}

/** The face of a cell on one side of a plate, at a row and layer. */
export function faceAt(
  { plate, n, lines }: Placed,
  side: ElectrodeSide,
  j: number,
  k: number,
  grid: Grid,
  bareShare = 1,
): BareFace {
  const i = side === 'minus' ? lines.minus - 1 : lines.plus;
  return {
    plate: n,
    electrode: plate.electrode,
    side,
    i,
    j,
    k,
    area: bareShare * (grid.y.sizes[j] as number) * (grid.z.sizes[k] as number),
    bareShare,
    depth: (grid.x.sizes[i] as number) / 2,
  };
}

/** All bare faces on one side of a plate, row by row. */
export function bareFacesOf(own: Placed, side: ElectrodeSide, grid: Grid): readonly BareFace[] {
  const faces: BareFace[] = [];
  const ny = grid.y.sizes.length;
  for (let k = own.layers[0]; k < own.layers[1]; k += 1)
    for (let j = own.rows[0]; j < own.rows[1]; j += 1) {
      const share = own.bare[side][j + ny * k] as number;
      if (share > 0) faces.push(faceAt(own, side, j, k, grid, share / 255));
    }
  return faces;
}
