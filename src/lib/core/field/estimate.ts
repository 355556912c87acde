import { faultsOf } from './faults.ts';
import type { FieldProblem } from './problem.ts';
import { solveField } from './solve.ts';
import type { FieldOptions, FieldSolution } from './solve.ts';

/** Smallest error claimed: the worst found where both grids agree, at the edges of plates. */
const LEAST = 0.003;
/** Share of the work that the coarser grid takes. */
const COARSE_SHARE = 0.1;

export interface EstimatedField extends FieldSolution {
  /** of the resistance, as a share of it: what a grid of twice the spacing says otherwise; null where that grid cannot hold the mask */
  readonly error: number | null;
}

/** Solves the cell, and on a grid of twice the spacing, to tell how far the answer can be trusted. */
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
