import { expect, test } from 'vitest';
import { solveCell } from '../../../src/lib/core/cell/solved-field.ts';
import { planAsProposed } from '../../../src/lib/core/plan/plan-job.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { cellFor, learntFor, ratesIn } from '../../../src/lib/session/bench-rates.ts';
import { summaryOf } from '../../../src/lib/session/job-summary.ts';
import type { JobSummary } from '../../../src/lib/session/job-summary.ts';
import { figureOf, jobOf, pendant } from '../../fixtures/jobs.ts';
import { aJob } from '../notebook/records-for-test.ts';

const MINUTE = 60_000;
const T0 = 1_764_000_000_000;

/** A job that went exactly as planned, read four times and measured with a gauge. */
function asPlanned(id: string, plan: Plan): JobSummary {
  const minutes = figureOf(plan, 'run_time').value;
  const [amps, volts] = [figureOf(plan, 'current').value, figureOf(plan, 'volts').value];
  return summaryOf(
    aJob(id, {
      planAtStart: plan,
      snapshot: {
        context: {
          runs: [{ startedAt: T0, stoppedAt: T0 + minutes * MINUTE, offAt: T0 + minutes * MINUTE }],
        },
      },
      readings: [0.3, 5, 10, 15].map((at) => ({
        at: T0 + at * MINUTE,
        amps,
        volts,
        celsius: null,
        note: '',
      })),
      result: {
        depthUm: figureOf(plan, 'depth').value,
        massBeforeG: null,
        massAfterG: null,
        note: '',
      },
      updatedAt: T0 + 90 * MINUTE,
    }),
  );
}

/** Half the logarithm of the range's ends after so many jobs that went as planned. */
function widths(most: number): readonly number[] {
  const summaries: JobSummary[] = [];
  return Array.from({ length: most + 1 }, (_, n) => {
    const rates = ratesIn(summaries, 'next');
    const rate = learntFor(rates, 'sterling-925', 'NaNO3');
    const plan = planAsProposed(
      {
        ...jobOf(pendant()),
        bench: {
          biteRate: rate && { median: rate.median, spread: rate.spread, jobs: rate.jobs },
          cell: cellFor(rates, 'sterling-925', 'NaNO3'),
        },
      },
      solveCell,
    );
    summaries.push(asPlanned(String(n), plan));
    const { low, high } = figureOf(plan, 'run_time');
    return Math.log(high / low) / 2;
  });
}

test('repeats that agree never widen the range; five of them narrow it to 15 %', () => {
  const all = widths(6);
  all.slice(1).forEach((width, n) => {
    expect(width, `after ${String(n + 1)}`).toBeLessThanOrEqual((all[n] ?? NaN) * 1.001);
  });
  expect(all[5]).toBeLessThan(0.15);
  expect(all[5]).toBeLessThan(all[4] ?? NaN);
});
