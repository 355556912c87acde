import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { finishedJob } from '../fixtures/finished-job.ts';
import { seed } from './notebook-seed.ts';

test('two jobs side by side: what differs, their curves, and the difference in a sentence', async ({
  page,
}) => {
  await page.setViewportSize(phone);
  // one that ran, and one that is only planned
  const ran = finishedJob('ran', 'Seed-head pendant', Date.UTC(2026, 10, 1), { result: null });
  await seed(page, [ran]);
  await page.goto('/compare/');
  await expect(page.getByText('fewer than two jobs')).toBeVisible();
  await page.goto('/');
  await page.getByText('Three jobs, planned').click();
  await page
    .getByRole('region', { name: 'Wave-band cuff' })
    .getByRole('button', { name: 'Start from this' })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your workshop');
  await page.goto('/');
  await page.getByRole('link', { name: 'Two jobs side by side' }).click();
  await expect(page.getByText(/answers differ: “Wave-band cuff” is to run/)).toBeVisible();
  await expect(page.getByRole('img', { name: /Amps against minutes/ })).toBeVisible();
  await expect(page.getByText('Seed-head pendant, as run')).toBeVisible();
  await expect(page.getByText('Wave-band cuff, as planned')).toBeVisible();
  await expectAccessible(page);
  await page.getByLabel('Second job').selectOption({ index: 1 });
  await expect(page.getByText(/No answer differs: “Seed-head pendant” ran/)).toBeVisible();
  // neither was measured: nothing is learnt, and it says what to do
  await page.goto('/look-back/');
  await expect(page.getByText('No job has shown anything yet.')).toBeVisible();
  await expectAccessible(page);
});
