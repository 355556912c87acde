import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { seed, storedJob } from './notebook-seed.ts';

test.use({ viewport: phone });

/** Fills the notebook and opens its page from the start page. */
async function notebookWith(page: Page, jobs: readonly object[]): Promise<void> {
  await seed(page, jobs);
  await page.goto('/');
  await page.getByRole('link', { name: 'Notebook file' }).click();
}

const take = (page: Page, text: string) =>
  page.getByLabel('Choose a notebook file').setInputFiles({
    name: 'notebook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

test('one file carries the notebook to another browser, and a second time adds nothing', async ({
  page,
  browser,
  baseURL,
}) => {
  await notebookWith(page, [storedJob('a', 'Pendant'), storedJob('b', 'Cuff'), { id: 'odd', version: 9 }]);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).first().click(),
  ]);
  expect(saved.suggestedFilename()).toMatch(/^etchwright-notebook-\d{4}-\d{2}-\d{2}\.txt$/);
  await expect(page.getByText(/^Saved 3 jobs and 0 baths/)).toBeVisible();
  const text = await readFile(await saved.path(), 'utf8');

  const other = await browser.newContext({ viewport: phone, baseURL: baseURL ?? '' });
  const there = await other.newPage();
  await there.goto('/notebook/');
  await take(there, text);
  await expect(there.getByText('2 new', { exact: true })).toBeVisible();
  await expect(there.getByText('1, kept as they are')).toBeVisible();
  await expectAccessible(there);
  await there.getByRole('button', { name: 'Write to the notebook' }).click();
  await expect(there.getByText('Written. Everything is in the notebook.')).toBeVisible();
  await take(there, text);
  await expect(there.getByText('0 new, 2 the same')).toBeVisible();
  await expect(there.getByText('Nothing to write.')).toBeVisible();
  await there.getByRole('link', { name: 'Etchwright' }).click();
  await expect(there.getByRole('link', { name: /^Pendant/ })).toBeVisible();
  await other.close();
});

test('a file chosen while the page still wakes is read all the same', async ({ page }) => {
  let wake: () => void = () => undefined;
  const chosen = new Promise<void>((resolve) => (wake = resolve));
  await page.route('**/entry/*.js', async (route) => {
    await chosen;
    await route.continue();
  });
  await page.goto('/notebook/', { waitUntil: 'commit' });
  await take(page, '{}');
  wake();
  await expect(page.getByRole('alert')).toBeVisible();
});

test('a conflict is chosen, never written over', async ({ page }) => {
  await notebookWith(page, [storedJob('a', 'Mine')]);
  await take(
    page,
    JSON.stringify({
      etchwrightNotebook: 1,
      appVersion: '0.1.0',
      savedAt: 1,
      jobs: [storedJob('a', 'Theirs'), storedJob('n', 'New one')],
      baths: [],
    }),
  );
  await expect(page.getByText('1 new, 1 conflict')).toBeVisible();
  const write = page.getByRole('button', { name: 'Write to the notebook' });
  await expect(write).toBeDisabled();
  await page.getByRole('radio', { name: /Keep both/ }).check();
  await expectAccessible(page);
  await write.click();
  await page.getByRole('link', { name: 'Etchwright' }).click();
  for (const title of ['Mine', 'Theirs (from file)', 'New one']) {
    await expect(
      page.getByRole('link', { name: new RegExp(`^${title.replace(/[()]/g, '\\$&')}`) }),
    ).toBeVisible();
  }
});

test('a bad file says what was found and what was expected', async ({ page }) => {
  await page.goto('/notebook/');
  await expectAccessible(page);
  await take(page, '{"etchwright":1}');
  await expect(page.getByRole('alert')).toHaveText(
    'Not loaded. Found: a job file or a printed plan. Expected: a notebook file of Etchwright, version 1 to 2.',
  );
});
