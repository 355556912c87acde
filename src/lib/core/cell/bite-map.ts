import type { DepthMap } from '../field/depth-map.ts';
import { solveWithEstimate } from '../field/estimate.ts';
import { flowLines } from '../field/flow-lines.ts';
import type { FlowLine } from '../field/flow-lines.ts';
import { evennessOf } from '../field/evenness.ts';
import { faultsOf } from '../field/faults.ts';
import type { FieldOptions } from '../field/solve.ts';
import type { Area } from '../units/quantity.ts';
import type { Setup } from './setup.ts';
import { faceMap, fieldProblemOf } from './solved-field.ts';

/** Where the bite is deep and shallow, solved on a finer grid than a plan needs. */
export interface BiteMap {
  /** of the most bitten face of the first piece, as seen from the plate */
  readonly map: DepthMap;
  /** share, 0 to 1 */
  readonly evenness: number;
  /** error of the resistance, as a share; null where no coarser grid can be solved */
  readonly error: number | null;
  /** m */
  readonly spacing: number;
  /** the same cell seen from above */
  readonly above: CellAbove;
}

/** A cell seen from above, cut at the height of the first piece's middle: x along the tub, y across it, m. */
export interface CellAbove {
  readonly length: number;
  readonly width: number;
  readonly plates: readonly {
    readonly electrode: 'anode' | 'cathode';
    readonly x: number;
    readonly thickness: number;
    readonly y0: number;
    readonly y1: number;
  }[];
  /** lines of current, each with an equal share of what leaves the metal there */
  readonly lines: readonly FlowLine[];
}

/** How many lines of current to draw. */
const LINES = 16;

/** Number of grid cells that a phone can hold and solve in a few seconds. */
const CELLS = 1_000_000;

/**
 * Solves the cell of a job on a finer grid, with its bare parts where the drawing has them, or over the whole
 * face.
 * @param finest spacing, m, if the tub is small enough for it
 * @returns null when the cell cannot be solved, or when the caller stopped the work
 */
export function biteMap(
  setup: Setup,
  openArea: Area,
  finest: number,
  options: FieldOptions = {},
): BiteMap | null {
  const rough = fieldProblemOf(setup, openArea, false);
  if (rough === null) return null;
  const { length, width, fill } = rough.box;
  const problem = { ...rough, spacing: Math.max(finest, Math.cbrt((length * width * fill) / CELLS)) };
  if (faultsOf(problem).length > 0) return null;
  const solution = solveWithEstimate(problem, options);
  const { faces, converged, error } = solution;
  if (!converged) return null;
  const bitten = faces.filter(({ electrode }) => electrode === 'anode');
  const map = faceMap(bitten, setup.piece, problem);
  const above = {
    length,
    width,
    plates: problem.plates.map(({ electrode, x, thickness, outline: { y0, y1 } }) => ({
      electrode,
      x,
      thickness,
      y0,
      y1,
    })),
    lines: flowLines(solution, problem, LINES),
  };
  return map && { map, evenness: evennessOf(bitten), error, spacing: problem.spacing, above };
}
