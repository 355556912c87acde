import { barriersOf, isClosed, openRims } from './barriers.ts';
import type { Barriers } from './barriers.ts';
import { beside, edgeShare } from './edge.ts';
import type { Beyond } from './edge.ts';
import { bareFacesOf, faceAt, placed } from './faces.ts';
import type { BareFace, Placed } from './faces.ts';
import type { Grid } from './grid.ts';
import type { FieldProblem, ElectrodeSide } from './problem.ts';

/**
 * A face beside bare metal, in the same plane. It carries the current that the grid would lose at the edge,
 * into the cell in front of the face or behind it.
 */
export interface EdgeFace extends BareFace {
  /** indices of the bare faces that it touches */
  readonly beside: readonly number[];
  /** its conductance, relative to a bare face of its size */
  readonly share: number;
}

export interface Layout extends Barriers {
  readonly bare: readonly BareFace[];
  readonly edges: readonly EdgeFace[];
}

const otherSide = { minus: 'plus', plus: 'minus' } as const;
/** Step from the cell in front of a face to the one behind its plane. */
const behind = { minus: 1, plus: -1 } as const;

/** Faces beside the bare ones of a plate's side. @param first index of the first bare one */
function edgesOf(
  own: Placed,
  side: ElectrodeSide,
  faces: readonly BareFace[],
  first: number,
  barriers: Barriers,
  grid: Grid,
): readonly EdgeFace[] {
  const ny = grid.y.sizes.length;
  /** thickness of the plate as drawn on the grid, m */
  const drawn = (grid.x.lines[own.lines.plus] as number) - (grid.x.lines[own.lines.minus] as number);
  const found = new Map<number, EdgeFace>();
  faces.forEach(({ j, k, depth }, n) => {
    const back = own.bare[otherSide[side]][j + ny * k] === 0 ? 'insulatedBack' : 'bareBack';
    for (const { j: jj, k: kk, key, inner, outer } of beside(grid, j, k)) {
      if (own.bare[side][key] !== 0) continue;
      const beyond: Beyond = isClosed(barriers, own.lines[side], key, grid) ? 'plane' : back;
      const share = edgeShare(beyond, { inner, outer, depth: 2 * depth, thickness: drawn });
      const face = faceAt(own, side, jj, kk, grid);
      const i = face.i + (beyond === 'insulatedBack' ? behind[side] : 0);
      const before = found.get(key);
      found.set(key, {
        ...face,
        i: before && before.share > share ? before.i : i,
        beside: [...(before?.beside ?? []), first + n],
        share: Math.max(before?.share ?? 0, share),
      });
    }
  });
  return [...found.values()];
}

/** Where metal, mask and liquid are on the grid. */
export function layoutOf({ plates, edgeCorrection = true }: FieldProblem, grid: Grid): Layout {
  const all = plates.map((plate, n) => placed(plate, n, grid));
  const barriers = barriersOf(all, grid);
  const bare: BareFace[] = [];
  const edges: EdgeFace[] = [];
  for (const own of all)
    for (const side of ['minus', 'plus'] as const) {
      const faces = bareFacesOf(own, side, grid);
      if (edgeCorrection) edges.push(...edgesOf(own, side, faces, bare.length, barriers, grid));
      bare.push(...faces);
    }
  if (edgeCorrection) openRims(barriers, all, grid);
  // drop edges in places that metal of another plate takes up
  const [nx, ny] = [grid.x.sizes.length, grid.y.sizes.length];
  const place = ({ i, j, k, side }: BareFace): string => `${i} ${j} ${k} ${side}`;
  const taken = new Set(bare.map(place));
  const free = edges.filter(
    (edge) => barriers.solid[edge.i + nx * (edge.j + ny * edge.k)] === 0 && !taken.has(place(edge)),
  );
  return { ...barriers, bare, edges: free };
}
