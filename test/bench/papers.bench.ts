import { expect, test } from '@playwright/test';
import { draftOf } from '../../src/lib/session/jobs-from-plan.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { jobOf, pendant } from '../fixtures/jobs.ts';
import { openJob } from '../e2e/notebook-seed.ts';
import { makePapers } from '../e2e/paper-panel.ts';

/** ms */
const bounds = { first: 3000, after: 1000 };

test('papers take at most 3 s the first time and 1 s after', async ({ page }) => {
  await openJob(page, jobAt('done', 'sheet', draftOf(jobOf(pendant()))));
  const first = await makePapers(page);
  const later: number[] = [];
  for (const paper of ['US Letter', 'A4']) {
    await page.getByRole('radio', { name: paper }).check();
    later.push((await makePapers(page)).ms);
  }
  console.log(
    `papers: first ${first.ms.toFixed(0)} ms, then ${later.map((ms) => ms.toFixed(0)).join(', ')} ms`,
  );
  expect(first.ms).toBeLessThanOrEqual(bounds.first);
  expect(Math.min(...later)).toBeLessThanOrEqual(bounds.after);
});
