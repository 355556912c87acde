import type { Axis } from './grid.ts';
import type { FieldProblem } from './problem.ts';
import type { FieldSolution } from './solve.ts';

/**
 * A line of current seen from above, from the dissolving metal to the plate: x along the tub, y across it, m.
 */
export type FlowLine = readonly (readonly [x: number, y: number])[];

/** Step along a line, as a share of the cell, and the highest number of steps. */
const STEP = 0.35;
const MOST = 4000;
/**
 * A balance smaller than this share of a cell's currents is an error of the solver, not current into metal.
 */
const UNSOLVED = 1e-4;
/** Points closer than this to the last one, m, are left out: a drawing would not show them. */
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
 * Lines of current at the height of a plate's middle. Each carries an equal share of the current that leaves
 * the metal there. Inside a cell the current density changes linearly from face to face, which keeps its
 * balance.
 * @param count how many lines
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

  /** current through the face between two cells, A, towards the second */
  const through = (t: Float64Array, m: number, step: number): number =>
    m < 0 || m + step >= potentials.length
      ? 0
      : (t[start + m] as number) * ((potentials[m] as number) - (potentials[m + step] as number));

  /**
   * current density at a point of a cell, from the currents through its faces; `metal` is the current that a
   * bare face of the cell gives or takes
   */
  function densityAt(i: number, j: number, x: number, y: number) {
    const m = i + nx * (j + ny * k);
    let [left, right] = [i > 0 ? through(tx, m - 1, 1) : 0, i < nx - 1 ? through(tx, m, 1) : 0];
    const [near, far] = [j > 0 ? through(ty, m - nx, nx) : 0, j < ny - 1 ? through(ty, m, nx) : 0];
    const [below, above] = [through(tz, m - layer, layer), through(tz, m, layer)];
    const missing = right - left + far - near + above - below;
    const all = [left, right, near, far, below, above].reduce((sum, one) => sum + Math.abs(one), 0);
    // a small imbalance in a cell without metal is an error of the solver
    const metal = Math.abs(missing) > UNSOLVED * all ? missing : 0;
    // the metal is on the side where the cell does not conduct on
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
      // the cell gives its current to metal: the line ends on the metal's face
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
