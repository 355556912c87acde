import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { solveCell } from '$lib/core/cell/solved-field.ts';
import { parseJob } from '$lib/core/plan/job-input.ts';
import { planJob } from '$lib/core/plan/plan-job.ts';
import { printPlan } from '$words/printed-plan.ts';

const root = new URL('../../../../', import.meta.url);
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, root), 'utf8'));

/**
 * The figures of the three examples as the first complete version printed them, to the last digit. A change
 * of how the code is arranged must not move them; a change of model or data makes the files anew and says why.
 */
test.each(['seed-head-pendant', 'wave-band-cuff', 'evening-class-tokens'])('%s keeps its figures', (name) => {
  const parsed = parseJob(read(`static/examples/${name}.json`));
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  const printed = JSON.parse(JSON.stringify(printPlan(planJob(parsed.job, solveCell)))) as {
    figures: unknown;
  };
  const golden = read(`test/fixtures/golden/${name}.json`) as { figures: unknown };
  expect(printed.figures).toEqual(golden.figures);
});
