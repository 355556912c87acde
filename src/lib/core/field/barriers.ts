import { beside, edgeShare } from './edge.ts';
import type { Placed } from './faces.ts';
import type { Grid } from './grid.ts';
import { isNothing } from './problem.ts';

/** What blocks the current. */
export interface Barriers {
  /**
   * share of the conductance that remains between cell i − 1 and cell i, by line, then row and layer; lines
   * without a plate are missing
   */
  readonly passes: ReadonlyMap<number, Float64Array>;
  /** 1 in cells of solid metal or resist */
  readonly solid: Uint8Array;
}

/** Whether a plate blocks a line at a row and layer. The walls at both ends count as blocked. */
export const isClosed = ({ passes }: Barriers, line: number, key: number, grid: Grid): boolean =>
  line === 0 || line === grid.x.sizes.length || passes.get(line)?.[key] === 0;

/** Turns plates and resist into blocked faces and solid cells. */
export function barriersOf(plates: readonly Placed[], grid: Grid): Barriers {
  const [nx, ny, nz] = [grid.x.sizes.length, grid.y.sizes.length, grid.z.sizes.length];
  const passes = new Map<number, Float64Array>();
  const solid = new Uint8Array(grid.cells);
  for (const { plate, lines, resist, rows, layers, bare } of plates)
    for (let k = layers[0]; k < layers[1]; k += 1)
      for (let j = rows[0]; j < rows[1]; j += 1) {
        const key = j + ny * k;
        const fill = (from: number, to: number) => solid.fill(1, from + nx * key, to + nx * key);
        fill(lines.minus, lines.plus);
        for (const side of ['minus', 'plus'] as const) {
          const plane = passes.get(lines[side]) ?? new Float64Array(ny * nz).fill(1);
          plane[key] = 0;
          passes.set(lines[side], plane);
          if (bare[side][key] === 0 && !isNothing(plate.bare[side])) fill(...resist[side]);
        }
      }
  return { passes, solid };
}

/**
 * Lets some current past the rim of a thin insulating board. On the grid its rim blocks too much, by as much
 * as the edge of an electrode passes too little: midway between the bath on its two sides the potential
 * equals that of the open plane beyond, as if that were metal. So the rim gets the same share as an edge.
 */
export function openRims(barriers: Barriers, plates: readonly Placed[], grid: Grid): void {
  const [nx, ny] = [grid.x.sizes.length, grid.y.sizes.length];
  const rims: { plane: Float64Array; key: number; share: number }[] = [];
  for (const { lines, rows, layers, bare } of plates) {
    const line = lines.minus;
    const plane = barriers.passes.get(line);
    if (line !== lines.plus || line === 0 || line === nx || plane === undefined) continue;
    const depth = ((grid.x.sizes[line - 1] as number) + (grid.x.sizes[line] as number)) / 2;
    for (let k = layers[0]; k < layers[1]; k += 1)
      for (let j = rows[0]; j < rows[1]; j += 1) {
        const key = j + ny * k;
        if (bare.minus[key] !== 0 || bare.plus[key] !== 0) continue;
        const shares = beside(grid, j, k)
          .filter((next) => plane[next.key] === 1)
          .map(({ inner, outer }) => edgeShare('plane', { inner: outer, outer: inner, depth, thickness: 0 }));
        if (shares.length === 0) continue;
        rims.push({ plane, key, share: shares.reduce((sum, one) => sum + one, 0) / shares.length });
      }
  }
  for (const { plane, key, share } of rims) plane[key] = share;
}
