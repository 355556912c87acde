import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { walkToSheet } from './demo-walk.ts';

test('two jobs side by side: what differs, their curves, and the difference in a sentence', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.setViewportSize(phone);
  await page.goto('/compare/');
  await expect(page.getByText('fewer than two jobs')).toBeVisible();
  // one that ran, and one that is only planned
  await page.goto('/');
  await page.getByText('Three jobs, planned').click();
  const start = (name: string) =>
    page.getByRole('region', { name }).getByRole('button', { name: 'Start from this' }).click();
  await start('Seed-head pendant');
  await walkToSheet(page, () => Promise.resolve());
  await page.goto('/');
  await page.getByText('Three jobs, planned').click();
  await start('Wave-band cuff');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What metal is the piece?');
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
  await page.goto('/bench/');
  await expect(page.getByText('No job has taught anything yet.')).toBeVisible();
  await expectAccessible(page);
});
