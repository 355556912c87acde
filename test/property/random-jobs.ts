import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { arbitraryJob } from './arbitrary-job.ts';
import { judge } from './plan-promises.ts';
import type { Ending } from './plan-promises.ts';
import { chunk } from './runs.ts';

const RUNS = 1000;

/** Registers 1000 random jobs for each part. */
export function runRandomJobs(parts: readonly number[]): void {
  const counts: Record<Ending, number> = { faults: 0, refused: 0, planned: 0 };
  test.each(parts)(
    '1000 random jobs, part %d: faults, refusals or a whole plan',
    (part) => {
      fc.assert(
        fc.property(arbitraryJob, (raw) => {
          const { outcome, broken } = judge(raw);
          counts[outcome] += 1;
          expect(broken).toEqual([]);
        }),
        chunk(RUNS, part),
      );
    },
    60_000,
  );
  // a generator that makes nothing but refusals would prove little
  afterAll(() => {
    const total = parts.length * RUNS;
    for (const outcome of ['faults', 'refused', 'planned'] as const) {
      expect(counts[outcome], outcome).toBeGreaterThan(total / 20);
    }
  });
}
