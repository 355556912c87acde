import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryJob } from './arbitrary-job.ts';
import { judge } from './plan-promises.ts';
import { seeds } from './runs.ts';

const JOBS = 1000;

test.each(seeds(2, 7919))('1000 random jobs of seed %d: faults, refusals or a whole plan', (seed) => {
  const counts = { faults: 0, refused: 0, planned: 0 };
  fc.assert(
    fc.property(arbitraryJob, (raw) => {
      const { outcome, broken } = judge(raw);
      counts[outcome] += 1;
      expect(broken).toEqual([]);
    }),
    { numRuns: JOBS, seed },
  );
  // a generator that makes nothing but refusals would prove little
  for (const [outcome, count] of Object.entries(counts)) expect(count, outcome).toBeGreaterThan(JOBS / 20);
});
