import { faultsOf } from './faults.ts';
import type { FieldProblem } from './problem.ts';
import { solveField } from './solve.ts';
import type { FieldOptions, FieldSolution } from './solve.ts';

/** Smallest error to report: the largest error that we found, at edges of plates, where both grids agree. */
const LEAST = 0.003;
/** Share of the progress that is counted for the coarser grid. */
const COARSE_SHARE = 0.1;

export interface EstimatedField extends FieldSolution {
  /**
   * relative error of the resistance: its difference on a grid of twice the spacing; null where that grid
   * cannot hold the mask
   */
  readonly error: number | null;
}

/**
 * Solves the cell on the grid and on one of twice the spacing. The difference shows how far to trust the
 * answer.
 */
export function solveWithEstimate(problem: FieldProblem, options: FieldOptions = {}): EstimatedField {
  const { shouldStop = () => false } = options;
  const coarse = { ...problem, spacing: 2 * problem.spacing };
  const isHeld = faultsOf(coarse).length === 0;
  const rough = isHeld
    ? solveField(coarse, { ...options, shouldStop: (share) => shouldStop(COARSE_SHARE * share) })
    : null;
  const first = isHeld ? COARSE_SHARE : 0;
  const fine = solveField(problem, {
    ...options,
    shouldStop: (share) => shouldStop(first + (1 - first) * share),
  });
  return {
    ...fine,
    error: rough?.converged ? Math.max(LEAST, Math.abs(rough.resistance / fine.resistance - 1)) : null,
  };
}
