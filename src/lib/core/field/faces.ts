import type { Axis, Grid } from './grid.ts';
import { lineAt } from './grid.ts';
import { isNothing } from './problem.ts';
import type { Bare, Electrode, FieldProblem, Plate, Rect, Side } from './problem.ts';

/** A face of a cell that lies on bare metal. */
export interface BareFace {
  /** of the problem's plates */
  readonly plate: number;
  readonly electrode: Electrode;
  readonly side: Side;
  /** cell that it belongs to: column, row, layer */
  readonly i: number;
  readonly j: number;
  readonly k: number;
  /** m² */
  readonly area: number;
  /** from the metal to the cell's centre, m */
  readonly depth: number;
}

/** A face beside bare metal, in its plane: through it passes what the grid's edge would lose. */
export interface EdgeFace extends BareFace {
  /** the bare faces that it touches, by their index */
  readonly beside: readonly number[];
}

export interface Layout {
  readonly bare: readonly BareFace[];
  readonly edges: readonly EdgeFace[];
  /** 1 where no current passes between cell i − 1 and cell i, by line, row, layer */
  readonly blocked: ReadonlyMap<number, Uint8Array>;
  /** 1 in cells of solid metal */
  readonly solid: Uint8Array;
}

const isBare = (plate: Plate, bare: Bare, y: number, z: number): boolean => {
  const { outline } = plate;
  const inside = ({ y0, y1, z0, z1 }: Rect): boolean => y > y0 && y < y1 && z > z0 && z < z1;
  if (bare.kind === 'none' || !inside(outline)) return false;
  if (bare.kind === 'all') return true;
  if (bare.kind === 'rects') return bare.rects.some(inside);
  if (bare.kind === 'disc') return Math.hypot(y - bare.y, z - bare.z) < bare.radius;
  const column = Math.floor(((y - outline.y0) / (outline.y1 - outline.y0)) * bare.columns);
  const row = Math.floor(((z - outline.z0) / (outline.z1 - outline.z0)) * bare.rows);
  return bare.cells[row * bare.columns + column] === 1;
};

const span = (of: Axis, from: number, to: number): readonly [number, number] => [
  lineAt(of, from),
  lineAt(of, to),
];

/** Where metal, mask and liquid meet on the grid. */
export function layoutOf({ plates }: FieldProblem, grid: Grid): Layout {
  const [nx, ny, nz] = [grid.x.sizes.length, grid.y.sizes.length, grid.z.sizes.length];
  const blocked = new Map<number, Uint8Array>();
  const solid = new Uint8Array(grid.cells);
  const bare: BareFace[] = [];
  const edges: EdgeFace[] = [];
  const block = (line: number, j: number, k: number): void => {
    const plane = blocked.get(line) ?? new Uint8Array(ny * nz);
    plane[j + ny * k] = 1;
    blocked.set(line, plane);
  };

  plates.forEach((plate, n) => {
    const [front, back] = span(grid.x, plate.x, plate.x + plate.thickness);
    const [j0, j1] = span(grid.y, plate.outline.y0, plate.outline.y1);
    const [k0, k1] = span(grid.z, plate.outline.z0, plate.outline.z1);
    for (let k = k0; k < k1; k += 1)
      for (let j = j0; j < j1; j += 1) {
        block(front, j, k);
        block(back, j, k);
        for (let i = front; i < back; i += 1) solid[i + nx * (j + ny * k)] = 1;
      }
    for (const side of ['minus', 'plus'] as const) {
      // the cell on this side of the metal
      const i = side === 'minus' ? front - 1 : back;
      if (i < 0 || i >= nx) continue;
      const first = bare.length;
      const mask = plate.mask ?? 0;
      const [from, to] =
        side === 'minus'
          ? span(grid.x, plate.x - mask, plate.x)
          : [back, lineAt(grid.x, plate.x + plate.thickness + mask)];
      const at = new Map<number, number>();
      const faceAt = (j: number, k: number): BareFace => ({
        plate: n,
        electrode: plate.electrode,
        side,
        i,
        j,
        k,
        area: (grid.y.sizes[j] as number) * (grid.z.sizes[k] as number),
        depth: (grid.x.sizes[i] as number) / 2,
      });
      for (let k = k0; k < k1; k += 1)
        for (let j = j0; j < j1; j += 1)
          if (isBare(plate, plate.bare[side], grid.y.centres[j] as number, grid.z.centres[k] as number)) {
            at.set(j + ny * k, bare.length);
            bare.push(faceAt(j, k));
          } else if (!isNothing(plate.bare[side]))
            for (let layer = from; layer < to; layer += 1) solid[layer + nx * (j + ny * k)] = 1;
      const beside = new Map<number, number[]>();
      for (let f = first; f < bare.length; f += 1) {
        const { j, k } = bare[f] as BareFace;
        for (const [dj, dk] of [
          [-1, 0],
          [1, 0],
          [0, -1],
          [0, 1],
        ] as const) {
          const [jj, kk] = [j + dj, k + dk];
          if (jj < 0 || jj >= ny || kk < 0 || kk >= nz) continue;
          const key = jj + ny * kk;
          if (!at.has(key)) beside.set(key, [...(beside.get(key) ?? []), f]);
        }
      }
      for (const [key, touches] of beside)
        edges.push({ ...faceAt(key % ny, Math.floor(key / ny)), beside: touches });
    }
  });
  // metal of another plate may stand where an edge would be
  const taken = new Set(bare.map(({ i, j, k, side }) => `${i} ${j} ${k} ${side}`));
  const free = edges.filter(
    ({ i, j, k, side }) => solid[i + nx * (j + ny * k)] === 0 && !taken.has(`${i} ${j} ${k} ${side}`),
  );
  return { bare, edges: free, blocked, solid };
}
