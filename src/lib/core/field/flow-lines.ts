import type { Axis } from './grid.ts';
import type { FieldProblem } from './problem.ts';
import type { FieldSolution } from './solve.ts';

/** A way of the current seen from above, from the metal that dissolves to the plate: x along the tub, y across it, m. */
export type FlowLine = readonly (readonly [x: number, y: number])[];

/** Step along a line, of the cell it is in; and steps at most. */
const STEP = 0.35;
const MOST = 4000;
/** Of a cell's currents: what is missing below this is no metal's. */
const UNSOLVED = 1e-4;
/** Points nearer than this to the last that is kept, m, add nothing to a drawing. */
const APART = 1e-3;

const indexIn = ({ lines }: Axis, place: number): number => {
  let [low, high] = [0, lines.length - 2];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((lines[middle] as number) <= place) low = middle;
    else high = middle - 1;
  }
  return low;
};

/**
 * Ways of the current at the height of a plate's middle, each carrying an equal share of what leaves the metal there.
 * Inside a cell the current density runs straight from face to face, as the balance of its faces says.
 * @param count how many
 */
export function flowLines(
  solution: FieldSolution,
  problem: FieldProblem,
  count: number,
): readonly FlowLine[] {
  const { network, potentials, grid, faces } = solution;
  const { nx, ny, start, tx, ty, tz } = network;
  const first = problem.plates.findIndex(({ electrode }) => electrode === 'anode');
  const plate = problem.plates[first];
  if (!plate) return [];
  const k = indexIn(grid.z, (plate.outline.z0 + plate.outline.z1) / 2);
  const middle = grid.z.centres[k] as number;
  const depth = grid.z.sizes[k] as number;
  const layer = nx * ny;

  /** current through a face between two cells, A, towards the second */
  const through = (t: Float64Array, m: number, step: number): number =>
    m < 0 || m + step >= potentials.length
      ? 0
      : (t[start + m] as number) * ((potentials[m] as number) - (potentials[m + step] as number));

  /** density in a cell at a place, from its faces; `metal` is what a bare face beside it gives or takes */
  function densityAt(i: number, j: number, x: number, y: number) {
    const m = i + nx * (j + ny * k);
    let [left, right] = [i > 0 ? through(tx, m - 1, 1) : 0, i < nx - 1 ? through(tx, m, 1) : 0];
    const [near, far] = [j > 0 ? through(ty, m - nx, nx) : 0, j < ny - 1 ? through(ty, m, nx) : 0];
    const [below, above] = [through(tz, m - layer, layer), through(tz, m, layer)];
    const missing = right - left + far - near + above - below;
    const all = [left, right, near, far, below, above].reduce((sum, one) => sum + Math.abs(one), 0);
    // what is missing in a cell without metal is what was not solved
    const metal = Math.abs(missing) > UNSOLVED * all ? missing : 0;
    // the metal is where no cell conducts on
    if (i < nx - 1 && (tx[start + m] as number) === 0) right -= metal;
    else if (i > 0 && (tx[start + m - 1] as number) === 0) left += metal;
    const [wide, deep] = [grid.x.sizes[i] as number, grid.y.sizes[j] as number];
    const alongX = (x - (grid.x.lines[i] as number)) / wide;
    const alongY = (y - (grid.y.lines[j] as number)) / deep;
    return {
      u: (left + (right - left) * alongX) / (deep * depth),
      v: (near + (far - near) * alongY) / (wide * depth),
      metal,
      size: Math.min(wide, deep),
    };
  }

  function lineFrom(x0: number, y0: number, side: 'minus' | 'plus'): FlowLine {
    const line: [number, number][] = [[x0, y0]];
    let [x, y] = [x0 + (side === 'plus' ? 1 : -1) * 1e-7, y0];
    for (let n = 0; n < MOST; n += 1) {
      const [i, j] = [indexIn(grid.x, x), indexIn(grid.y, y)];
      const { u, v, metal, size } = densityAt(i, j, x, y);
      const speed = Math.hypot(u, v);
      if (speed === 0) break;
      const step = (STEP * size) / speed;
      const [a, b] = [x + step * u, y + step * v];
      // a cell that gives current to metal: the line ends where it would cross
      const edge = grid.x.lines[u > 0 ? i + 1 : i] as number;
      if (metal < 0 && (a - edge) * u >= 0) {
        line.push([edge, y]);
        return line;
      }
      [x, y] = [a, b];
      const last = line.at(-1) as [number, number];
      if (Math.hypot(x - last[0], y - last[1]) >= APART) line.push([x, y]);
    }
    return line;
  }

  const row = faces
    .filter((face) => face.plate === first && Math.abs(face.z - middle) < depth / 2 && face.density > 0)
    .sort((a, b) => (a.side === b.side ? a.y - b.y : a.side < b.side ? -1 : 1));
  const whole = row.reduce((sum, face) => sum + face.density * face.width * face.bareShare, 0);
  const lines: FlowLine[] = [];
  let passed = 0;
  for (const { density, width, bareShare, y, side } of row) {
    const own = density * width * bareShare;
    for (; lines.length < count && passed + own >= ((lines.length + 0.5) / count) * whole;) {
      const share = (((lines.length + 0.5) / count) * whole - passed) / own;
      lines.push(
        lineFrom(plate.x + (side === 'plus' ? plate.thickness : 0), y + (share - 0.5) * width, side),
      );
    }
    passed += own;
  }
  return lines;
}
