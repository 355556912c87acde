import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { seed, storedJob } from './notebook-seed.ts';

test.use({ viewport: phone });

const build = fileURLToPath(new URL('../../build', import.meta.url));
const MOST_SCRIPT = 60_000;

test('the start page asks for at most 60 KB of script, gzipped', () => {
  const html = readFileSync(join(build, 'index.html'), 'utf8');
  const files = new Set([...html.matchAll(/["']([^"']+\.js)["']/g)].map((match) => match[1] ?? ''));
  const own = [...files].filter((file) => !file.endsWith('service-worker.js'));
  expect(own.length).toBeGreaterThan(3);
  const bytes = own.map((file) => gzipSync(readFileSync(join(build, dirname('index.html'), file))).length);
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(MOST_SCRIPT);
});

test('starts a job, lists it, deletes it and takes that back', async ({ page }) => {
  await page.goto('/');
  await expect(page.getByText('No job in this browser yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Start a job' }).click();
  await expect(page).toHaveURL(/\/job\/\?id=/);
  await page.getByRole('link', { name: 'Etchwright' }).click();

  const job = page.getByRole('link', { name: /^My piece/ });
  await expect(job).toContainText('Metal · today');
  await page.getByRole('button', { name: 'Delete “My piece”' }).click();
  await expect(job).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(job).toBeVisible();
});

test('a job whose supply may be on stands first and cannot be deleted; the unreadable is shown', async ({
  page,
}) => {
  await seed(page, [
    storedJob('new', 'Later touched', { updatedAt: Date.now() }),
    storedJob('live', 'Seed-head', { snapshot: { value: { etch: 'running' }, context: {} } }),
    { id: 'odd', version: 9 },
  ]);
  await page.goto('/');
  const rows = page.getByRole('listitem').filter({ has: page.getByRole('link') });
  await expect(rows.first()).toContainText('Is the supply off?');
  await expect(rows.first()).toContainText('Seed-head');
  await expect(page.getByRole('button', { name: 'Delete “Seed-head”' })).toHaveCount(0);
  await expect(page.getByText('odd')).toBeVisible();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe('etchwright-record-odd.json');
  await expectAccessible(page);
});

test('an example opens to its figures and its cautions, and makes a job', async ({ page }) => {
  await page.goto('/');
  await page.getByText('Three jobs, planned').click();
  const cuff = page.getByRole('region', { name: 'Wave-band cuff' });
  await cuff.getByText('Steps and safety messages').click();
  await expect(cuff.getByText('DANGER').or(cuff.getByText('WARNING')).first()).toBeVisible();
  await cuff.getByText(/^Every figure/).click();
  await expect(cuff.getByText('How?').first()).toBeVisible();
  await expectAccessible(page);
  await cuff.getByRole('button', { name: 'Start from this' }).click();
  await expect(page).toHaveURL(/\/job\/\?id=/);
  await page.getByRole('link', { name: 'Etchwright' }).click();
  await expect(page.getByRole('link', { name: /^Wave-band cuff/ })).toContainText('copper');
});

test('without storage it says so and starts nothing', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await page.goto('/');
  await expect(page.getByRole('alert')).toContainText('allows no storage');
  await expect(page.getByRole('button', { name: 'Start a job' })).toBeDisabled();
});

test('on plain http it says what is off', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'isSecureContext', { value: false });
  });
  await page.goto('/');
  await expect(page.getByText(/^Plain http: nothing is kept for use offline/)).toBeVisible();
});

test('an unknown address leads home', async ({ page }) => {
  await page.goto('/no-such-page/');
  await page.getByRole('link', { name: 'All jobs' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Etchwright');
});
