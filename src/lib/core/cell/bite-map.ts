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

/** Where the bite goes, on a grid finer than a plan needs. */
export interface BiteMap {
  /** of the most bitten face of the first piece, as the plate sees it */
  readonly map: DepthMap;
  /** share, 0 to 1 */
  readonly evenness: number;
  /** of the resistance, as a share; null where no coarser grid can tell */
  readonly error: number | null;
  /** m */
  readonly spacing: number;
  /** the same cell from above */
  readonly above: CellAbove;
}

/** A cell seen from above at the height of the first piece's middle: x along the tub, y across it, m. */
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
  /** each carries an equal share of the current that leaves the metal there */
  readonly lines: readonly FlowLine[];
}

/** Ways of the current that are drawn. */
const LINES = 16;

/** Cells that a phone can hold and solve in some seconds. */
const CELLS = 1_000_000;

/**
 * Solves the cell of a job on a finer grid, its bare parts as they lie, or all over the face.
 * @param finest m, where the tub lets it
 * @returns null when the cell cannot be solved, or the run was called off
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
