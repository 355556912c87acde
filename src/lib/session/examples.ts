import { parseJob } from '../core/plan/job-input.ts';
import { planJob } from '../core/plan/plan-job.ts';
import type { Plan } from '../core/plan/plan.ts';
import tokens from '../../../static/examples/evening-class-tokens.json';
import pendant from '../../../static/examples/seed-head-pendant.json';
import cuff from '../../../static/examples/wave-band-cuff.json';

export interface Example {
  /** address of the job file under the app's root */
  readonly file: string;
  readonly plan: Plan;
}

const files: readonly (readonly [string, unknown])[] = [
  ['examples/seed-head-pendant.json', pendant],
  ['examples/wave-band-cuff.json', cuff],
  ['examples/evening-class-tokens.json', tokens],
];

/** The example jobs that ship with the app, planned. */
export const examples = (): Example[] =>
  files.map(([file, unknown]) => {
    const parsed = parseJob(unknown);
    if ('faults' in parsed) throw new Error(`the example ${file} does not parse`);
    return { file, plan: planJob(parsed.job) };
  });
