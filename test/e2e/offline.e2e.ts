import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { hostUnder } from './static-host.ts';

test.use({ serviceWorkers: 'allow' });

/** Waits until every file is kept and the page is served from there. */
async function kept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) => {
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true });
    });
  });
}

test('every page opens again with the network off', async ({ page, context }) => {
  await page.goto('/');
  await kept(page);
  await expect(page.getByText('Works without a network.')).toBeVisible();
  await page.getByRole('button', { name: 'Start a job' }).click();
  await expect(page).toHaveURL(/\/job\/\?id=/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  const job = page.url();
  const title = await page.getByRole('heading', { level: 1 }).innerText();

  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  for (const [path, heading] of [
    ['/', 'Etchwright'],
    ['/help/', 'Help now'],
    ['/help/fire/', 'Fire'],
    ['/wear/lye/', 'Lye'],
    ['/wear/', 'What to wear'],
    ['/wear/acetone', 'Acetone'],
    ['/notebook/', 'Notebook file'],
  ] as const) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(heading);
  }

  // from page to page inside the app, whose data and chunks must be there too
  await page.getByRole('link', { name: 'Etchwright' }).click();
  await expect(page.getByRole('link', { name: /^My piece/ })).toBeVisible();
  await page.getByText('Three jobs, planned').click();
  await page
    .getByText(/^Every figure/)
    .first()
    .click();
  await expect(page.getByText('How?').first()).toBeVisible();
  await page.goto(job);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  await page.goto('/no-such-page/');
  await expect(page.getByText('There is no such page')).toBeVisible();
});

test('every built file is kept, in one cache', async ({ page }) => {
  await page.goto('/');
  await kept(page);
  const names = await page.evaluate(() => caches.keys());
  expect(names).toHaveLength(1);
  const paths = await page.evaluate(async () => {
    const cache = await caches.open((await caches.keys())[0] ?? '');
    return (await cache.keys()).map(({ url }) => new URL(url).pathname);
  });
  for (const wanted of ['/', '/job/', '/help/eye/', '/__data.json', '/examples/wave-band-cuff.json']) {
    expect(paths).toContain(wanted);
  }
  const sizes = await Promise.all(
    paths
      .filter((path) => !path.endsWith('/404.html'))
      .map(async (path) => {
        const file = path.endsWith('/') ? `${path}index.html` : path;
        return gzipSync(await readFile(join('build', file))).length;
      }),
  );
  // our own bound: in ten seconds over a slow line of 1.6 Mbit/s all is kept
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(2_000_000);
  expect(paths.filter((path) => path.includes('.worker-')).length).toBeGreaterThanOrEqual(2);
  expect(paths.filter((path) => path.endsWith('.ttf')).length).toBeGreaterThanOrEqual(4);
});

test('in a folder of a plain host it works offline, and a new version waits for the bench and a tap', async ({
  page,
  context,
}) => {
  const host = await hostUnder('makers/tools');
  await page.goto(host.address);
  await kept(page);
  await expect(page.getByText('Works without a network.')).toBeVisible();

  host.release();
  // another page has a run on
  const bench = await context.newPage();
  await bench.goto(`${host.address}wear/`);
  await bench.evaluate(() => {
    void navigator.locks.request('etchwright-bench', { mode: 'shared' }, () => new Promise(() => undefined));
  });
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
    while (!registration?.waiting) await new Promise((done) => setTimeout(done, 50));
  });
  await page.getByRole('link', { name: 'What to wear' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What to wear');
  await expect(page.getByText('A new version is ready.')).toHaveCount(0);

  await bench.close();
  await page.getByRole('link', { name: /^Acetone in/ }).click();
  await expect(page.getByText('A new version is ready.')).toBeVisible();
  await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load it' }).click()]);
  await expect(page.getByText('A new version is ready.')).toHaveCount(0);
  expect(
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting ?? null),
  ).toBeNull();

  await context.setOffline(true);
  await host.close();
  await page.goto(`${host.address}help`);
  await expect(page).toHaveURL(`${host.address}help/`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Help now');
  await page.getByRole('link', { name: 'Etchwright' }).click();
  await page.getByRole('button', { name: 'Start a job' }).click();
  await expect(page).toHaveURL(/makers\/tools\/job\/\?id=/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});
