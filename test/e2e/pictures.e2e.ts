import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { finishedJob, liftedJob } from '../fixtures/finished-job.ts';
import { linesFor } from '../unit/notebook/in-memory.ts';
import { expectAccessible, phone } from './axe.ts';
import { seed } from './notebook-seed.ts';

test.use({ viewport: phone });

/** A photograph as a camera hands it over: a JPEG larger than is kept, with a place noted beside it. */
async function photograph(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [2400, 1200];
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    pen.fillStyle = 'teal';
    pen.fillRect(200, 200, 2000, 800);
    return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
  });
  const plain = Buffer.from(base64, 'base64');
  const note = Buffer.from('Exif\0\0 GPS 41.2 S 174.8 E', 'latin1');
  const size = note.length + 2;
  const segment = Buffer.concat([Buffer.from([0xff, 0xe1, size >> 8, size & 0xff]), note]);
  return Buffer.concat([plain.subarray(0, 2), segment, plain.subarray(2)]);
}

const add = async (page: Page, buffer: Buffer, name = 'photo.jpg', mimeType = 'image/jpeg') =>
  page.getByLabel('Add a picture of the finished piece').setInputFiles({ name, mimeType, buffer });

test('a picture stays with its job, without its place, comes back when removed, and travels with the file', async ({
  page,
  browser,
  baseURL,
}) => {
  await seed(page, [finishedJob('done', 'Fern', Date.UTC(2026, 10, 1))]);
  await page.goto('/job/?id=done');
  await add(page, Buffer.from('no picture'), 'notes.jpg');
  await expect(page.getByRole('alert')).toContainText('opens no picture from that file');
  await add(page, await photograph(page));
  const picture = page.getByRole('img', { name: 'Finished, picture 1' });
  await expect(picture).toBeVisible();
  expect(await picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(1600);
  await page.reload();
  await expect(picture).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Remove: Finished, picture 1' }).click();
  await expect(picture).toHaveCount(0);
  await page.getByRole('button', { name: 'Put back' }).click();
  await expect(picture).toBeVisible();

  await page.goto('/notebook/');
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).first().click(),
  ]);
  const text = await readFile(await saved.path(), 'utf8');
  const kept = /"photo":\{"id":"[0-9a-f]{64}","base64":"([^"]+)"/.exec(text)?.[1] ?? '';
  const bytes = Buffer.from(kept, 'base64').toString('latin1');
  expect(bytes).not.toContain('Exif');
  expect(bytes).not.toContain('GPS');

  const other = await browser.newContext({ viewport: phone, baseURL: baseURL ?? '' });
  const there = await other.newPage();
  await there.goto('/notebook/');
  await there.getByLabel('Choose a notebook file').setInputFiles(await saved.path());
  await expect(there.getByText('pictures', { exact: true })).toBeVisible();
  await there.getByRole('button', { name: 'Write to the notebook' }).click();
  await expect(there.getByText('Written. Everything is in the notebook.')).toBeVisible();
  await there.goto('/job/?id=done');
  await expect(there.getByRole('img', { name: 'Finished, picture 1' })).toBeVisible();
  await other.close();
});

test('a picture that finds no room loses no text', async ({ page }) => {
  await page.addInitScript(() => {
    const put = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'put')?.value as (
      this: IDBObjectStore,
      ...args: unknown[]
    ) => IDBRequest<IDBValidKey>;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: unknown[]) {
      if (this.name === 'photos') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, args);
    };
  });
  await seed(page, [finishedJob('done', 'Fern', Date.UTC(2026, 10, 1))]);
  await page.goto('/job/?id=done');
  await page.getByLabel('Title').fill('Fern, deep');
  await add(page, await photograph(page));
  await expect(page.getByRole('alert')).toContainText('The picture was not kept (QuotaExceededError)');
  await page.reload();
  await expect(page.getByLabel('Title')).toHaveValue('Fern, deep');
});

test('what a file says was checked is asked again: the same job, once this browser’s own and once from a file', async ({
  page,
}) => {
  const now = Date.now() - 60_000;
  await seed(page, [liftedJob('own', 'Own', now)]);
  const lines = await linesFor({ jobs: [liftedJob('theirs', 'Theirs', now)] });
  await page.goto('/notebook/');
  await page.getByLabel('Choose a notebook file').setInputFiles({
    name: 'notebook.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(`${lines.join('\n')}\n`),
  });
  await expect(page.getByText('Checks do not come with the file')).toBeVisible();
  await page.getByRole('button', { name: 'Write to the notebook' }).click();
  await expect(page.getByText('Written. Everything is in the notebook.')).toBeVisible();
  const locked = page.getByText('The checks before mixing no longer hold');
  await page.goto('/job/?id=own');
  await expect(page.getByRole('button', { name: 'Clock on' })).toBeDisabled();
  await expect(locked).toHaveCount(0);
  await page.goto('/job/?id=theirs');
  await expect(page.getByRole('button', { name: 'Clock on' })).toBeDisabled();
  await expect(locked).toBeVisible();
  // and still, once the page has been opened again
  await page.reload();
  await expect(locked).toBeVisible();
});
