import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { atHeading, finger, pendantJob, walk } from './job-walk.ts';
import { openJob } from './notebook-seed.ts';

test.use({ viewport: phone });

const troubles = {
  Eye: 'Rinse the eye now.',
  Skin: 'Rinse now,',
  Swallowed: 'Rinse the mouth.',
  'Gas, smell': 'Out, into fresh air.',
  Fire: 'Everybody out.',
  Shock: 'Pull the plug,',
  Cut: 'Rinse the cut now,',
  'Yellow bath': 'Switch the supply off.',
} as const;

for (const [name, act] of Object.entries(troubles)) {
  test(`help for ${name} is one tap from the tiles, and its first line is the act`, async ({ page }) => {
    await page.goto('/help/');
    await page.getByRole('link', { name }).click();
    const first = page.getByRole('listitem').first();
    await expect(first).toContainText(act);
    await expect(first).toBeInViewport({ ratio: 1 });
    const size = await first.evaluate((element) => parseFloat(getComputedStyle(element).fontSize));
    expect(size, 'readable at a metre').toBeGreaterThanOrEqual(36);
    await expectAccessible(page);
  });
}

test('help is one tap from every page, needs no job, no script and no phone number of ours', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    viewport: phone,
    baseURL: baseURL ?? '',
  });
  const page = await context.newPage();
  for (const from of ['/', '/wear/', '/wear/acetone/', '/notebook/']) {
    await page.goto(from);
    await page.getByRole('link', { name: 'Help', exact: true }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Help now');
  }
  await page.getByRole('link', { name: 'Swallowed' }).click();
  await expect(page.getByText('Do not make anyone vomit.')).toBeVisible();
  expect(await page.getByRole('main').innerText()).not.toMatch(/\d{3,}[- ]?\d{3,}|\b(911|112|999|000)\b/);
  await context.close();
});

test('the tiles are accessible and fit a small phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/help/');
  await expectAccessible(page);
  const heights = await page
    .getByRole('listitem')
    .getByRole('link')
    .evaluateAll((links) => links.map((link) => link.getBoundingClientRect().height));
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(64);
});

test('opened during a run, help leaves the clock running', async ({ page }) => {
  await openJob(page, jobAt('pendant', 'etch.hold'));
  await walk(page, finger(page), pendantJob.slice(-1));
  await atHeading(page, 'Biting');
  await page.getByRole('link', { name: 'Help', exact: true }).click();
  await expect(page).toHaveURL(/\/help\/$/);
  await expect(page.getByRole('heading', { level: 1, name: 'Help now' })).toBeFocused();
  await expect(page.getByText('A run that is on goes on counting')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Biting' })).toBeHidden();
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Eye' }).click();
  await expect(page).toHaveURL(/\/help\/eye\/$/);
  await page.getByRole('button', { name: 'Back to the job' }).click();
  await expect(page).toHaveURL(/\/job\/\?id=/);
  await atHeading(page, 'Biting');
  await page.getByRole('link', { name: 'Help', exact: true }).click();
  await atHeading(page, 'Help now');
  await page.goBack();
  await atHeading(page, 'Biting');
});
