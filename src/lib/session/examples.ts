import { parseJob } from '../core/plan/job-input.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { solveCell } from '../core/cell/solved-field.ts';
import { planAsProposed } from '../core/plan/plan-job.ts';
import type { Plan } from '../core/plan/plan.ts';
import tokens from '../../../static/examples/evening-class-tokens.json';
import pendant from '../../../static/examples/seed-head-pendant.json';
import cuff from '../../../static/examples/wave-band-cuff.json';

export interface Example {
  /** address of the job file below the app's root */
  readonly file: string;
  /** as its file has it, with what the supply can do */
  readonly job: JobInput;
  /** its supply set as proposed, as in the app */
  readonly plan: Plan;
}

const files: readonly (readonly [string, unknown])[] = [
  ['examples/seed-head-pendant.json', pendant],
  ['examples/wave-band-cuff.json', cuff],
  ['examples/evening-class-tokens.json', tokens],
];

function planned([file, unknown]: (typeof files)[number]): Example {
  const parsed = parseJob(unknown);
  if ('faults' in parsed) throw new Error(`the example ${file} does not parse`);
  const { job } = parsed;
  return { file, job, plan: planAsProposed(job, solveCell) };
}

/** The example jobs of the app, planned. */
export const examples = (): Example[] => files.map(planned);

/** @throws RangeError when there is no such example */
export function exampleIn(file: string): Example {
  const found = files.find(([name]) => name === file);
  if (!found) throw new RangeError(`example "${file}" found, one of those that ship expected`);
  return planned(found);
}
