import { expect, test } from '@playwright/test';
import { finishedJob } from '../fixtures/finished-job.ts';
import { seedMany } from './many-jobs.ts';

const MANY = 300;

test('hundreds of jobs are listed, saved, and taken in again by a browser that has none', async ({
  page,
  browser,
  baseURL,
}) => {
  await page.goto('/');
  // told only once the store has all its parts
  await expect(page.getByText('No job in this browser yet.')).toBeVisible();
  await seedMany(page, finishedJob('x', 'X', Date.UTC(2026, 10, 1)), MANY);
  await page.goto('/');
  await expect(page.getByRole('link', { name: /^Piece 0/ })).toBeVisible();
  await page.goto('/notebook/');
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).first().click(),
  ]);

  const other = await browser.newContext({ baseURL: baseURL ?? '' });
  const there = await other.newPage();
  await there.goto('/notebook/');
  await there.getByLabel('Choose a notebook file').setInputFiles(await saved.path());
  await expect(there.getByText(`${String(MANY)} new`)).toBeVisible();
  await there.getByRole('button', { name: 'Write to the notebook' }).click();
  await expect(there.getByText('Written. Everything is in the notebook.')).toBeVisible();
  await there.goto('/');
  await expect(there.getByRole('link', { name: /^Piece 0/ })).toBeVisible();
  await other.close();
});
