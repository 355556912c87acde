import type { Run } from '../core/run/run.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { CheckBasis } from './check-basis.ts';
import type { Answers } from './freshness.ts';

/** Plain data, so that it can be stored without conversion. */
export interface ProcedureContext {
  readonly basis: CheckBasis;
  readonly answers: Answers;
  /** number of answers so far */
  readonly seq: number;
  /** after a pause or a reload, answers up to this number must be given again where they are critical */
  readonly spent: number;
  /** after a stop, answers up to this number must be given again where a stop can have changed them */
  readonly spentByStop: number;
  readonly runs: readonly Run[];
  /** the furthest step reached: none beyond it can be chosen */
  readonly reached: StepId;
  /** how far the work at the bench has come: it goes on there after a look back at the plan */
  readonly prepared: 'nothing' | 'mixed' | 'masked';
  /** an input changed while powered: stop is asked for at once */
  readonly stopWanted: boolean;
  /** runs under a mask that has come off since; 0 for the first bite */
  readonly runsBeforeMask: number;
  /** times a test strip had current; missing in snapshots stored before strips existed */
  readonly stripRuns?: readonly Run[];
}

/** Whether runs belong to the piece or to the test strip. */
export type RunList = 'runs' | 'stripRuns';

export const runsOf = (context: ProcedureContext, of: RunList): readonly Run[] => context[of] ?? [];

/** The change of context that puts these runs in place. */
export const withRuns = (of: RunList, runs: readonly Run[]): Partial<ProcedureContext> =>
  of === 'runs' ? { runs } : { stripRuns: runs };

export const endRun = (runs: readonly Run[], change: Partial<Run>): readonly Run[] =>
  runs.map((run, i) => (i === runs.length - 1 ? { ...run, ...change } : run));
