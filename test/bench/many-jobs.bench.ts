import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { finishedJob } from '../fixtures/finished-job.ts';
import { seedMany } from '../e2e/many-jobs.ts';
import { slowness } from './slowness.ts';

const MANY = 5000;
/** s, for the whole file out and for the whole file in */
const FILE = 10;
/** ms, for the list over one of no job */
const LIST = 200;

test.describe.configure({ timeout: 300_000 });

/** Notes when the list stands: its first link, or the word that there is none. */
const watchList = (page: Page) =>
  page.addInitScript(() => {
    const timer = setInterval(() => {
      const text = document.querySelector('#jobs-title')?.parentElement?.textContent ?? '';
      if (!/Piece 0|No job in this browser yet/.test(text)) return;
      clearInterval(timer);
      Object.assign(globalThis, { listStood: performance.now() });
    }, 1);
  });

/** How long the start page takes until its list stands, ms: the best of some. */
async function listed(page: Page): Promise<number> {
  const times: number[] = [];
  for (let n = 0; n < 5; n += 1) {
    await page.goto('/');
    await page.waitForFunction(() => 'listStood' in globalThis);
    times.push(await page.evaluate(() => (globalThis as unknown as { listStood: number }).listStood));
  }
  return Math.min(...times);
}

const seconds = async (work: () => Promise<void>): Promise<number> => {
  const start = Date.now();
  await work();
  return (Date.now() - start) / 1000;
};

test('five thousand jobs: listed in 200 ms, saved and taken in again in 10 s each', async ({ page }) => {
  await watchList(page);
  const empty = await listed(page);
  const slower = await slowness(page);
  await seedMany(page, finishedJob('x', 'X', Date.UTC(2026, 10, 1)), MANY);
  // the first look makes what the list is read from; it is kept beside the jobs
  const first = await seconds(async () => {
    await page.goto('/');
    await expect(page.getByRole('link', { name: /^Piece 0/ })).toBeVisible({ timeout: 120_000 });
  });
  const list = (await listed(page)) - empty;

  await page.goto('/notebook/');
  let path = '';
  const out = await seconds(async () => {
    const [saved] = await Promise.all([
      page.waitForEvent('download', { timeout: 120_000 }),
      page.getByRole('button', { name: 'Save as a file' }).first().click(),
    ]);
    path = await saved.path();
  });
  await page.goto('/parts/');
  await page.evaluate(
    () =>
      new Promise((done) => {
        indexedDB.deleteDatabase('etchwright').onsuccess = done;
      }),
  );
  await page.goto('/notebook/');
  const into = await seconds(async () => {
    await page.getByLabel('Choose a notebook file').setInputFiles(path);
    await expect(page.getByText(`${String(MANY)} new`)).toBeVisible({ timeout: 120_000 });
    await page.getByRole('button', { name: 'Write to the notebook' }).click();
    await expect(page.getByText('Written. Everything is in the notebook.')).toBeVisible({ timeout: 120_000 });
  });
  await page.goto('/');
  await expect(page.getByRole('link', { name: /^Piece 0/ })).toBeVisible({ timeout: 120_000 });
  console.log(
    `${String(MANY)} jobs: listed in ${list.toFixed(0)} ms, the first time in ${first.toFixed(1)} s; saved in ${out.toFixed(1)} s, taken in again in ${into.toFixed(1)} s, ${slower.toFixed(1)} times slower`,
  );
  expect(list / slower).toBeLessThanOrEqual(LIST);
  expect(out / slower).toBeLessThanOrEqual(FILE);
  expect(into / slower).toBeLessThanOrEqual(FILE);
});
