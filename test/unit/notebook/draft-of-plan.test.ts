import { expect, test } from 'vitest';
import { parseJob } from '$lib/core/plan/job-input.ts';
import { planJob } from '$lib/core/plan/plan-job.ts';
import { examples } from '$lib/session/examples.ts';
import { jobFileOf } from '$lib/session/job-file.ts';
import { draftOf } from '$lib/session/jobs-from-plan.ts';

test.each(examples().map(({ file, plan }) => [file, plan] as const))(
  'the draft of %s plans to the same figures',
  (_file, plan) => {
    const parsed = parseJob(jobFileOf(draftOf(plan.job)));
    if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
    const again = planJob(parsed.job);
    for (const id of ['salt_mass', 'charge', 'water_volume', 'undercut'] as const) {
      const [was, is] = [plan.figures[id]?.value ?? NaN, again.figures[id]?.value ?? NaN];
      expect(Math.abs(is / was - 1)).toBeLessThan(1e-4);
    }
  },
);
