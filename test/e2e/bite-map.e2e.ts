import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { jobAt } from '../fixtures/job-at.ts';
import { openJob } from './notebook-seed.ts';

test('shows where it bites deepest: a first look, then a finer one, and can be left at the first', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.setViewportSize(phone);
  await openJob(page, jobAt('pendant', 'settings.plan'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your plan');
  const title = page.getByText('Where it bites deepest');
  await title.click();
  const map = page.getByRole('img', { name: /stronger where it is bitten deeper/ });
  await expect(map).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 60_000 });
  await expect(page.getByText(/on average the shallowest places get/).last()).toBeVisible();
  await expect(page.getByRole('img', { name: /Section through the middle/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /tub from above/ })).toBeVisible();
  const shares = await page
    .locator('details[open] table')
    .first()
    .locator('tbody td:last-child')
    .allInnerTexts();
  const sum = shares.reduce((total, share) => total + parseFloat(share), 0);
  expect(Math.abs(sum - 100)).toBeLessThan(3);
  await expectAccessible(page);
  // again, and left at the first look
  await title.click();
  await title.click();
  const leave = page.getByRole('button', { name: 'Stop at this look' });
  await leave.click({ timeout: 30_000 });
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  await expect(map).toBeVisible();
  await title.click();
  await page.getByText('What moves the depth').click();
  await expect(page.getByRole('row', { name: /Bare area/ })).toBeVisible();
  const moves = await page.locator('details[open] tbody td:last-child').allInnerTexts();
  expect(Math.abs(moves.reduce((total, share) => total + parseFloat(share), 0) - 100)).toBeLessThan(3);
  // twice the bare metal for the same amp-hours: half as deep
  await page.getByRole('button', { name: /^Try: Bare area/ }).click();
  await page.getByRole('textbox', { name: /^Bare area/ }).fill('7.2');
  await expect(page.getByText(/Stopped as planned: 50\sμm, 50 % shallower/)).toBeVisible();
  await expectAccessible(page);
});

test('a test strip that bites four fifths as deep as expected moves the plan', async ({ page }) => {
  await page.setViewportSize(phone);
  await openJob(page, jobAt('pendant', 'settings.knobs'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Hang, clip and set');
  const minutes = page.getByText(/^Stop at .* with current on/);
  await page.getByText('a test strip first').click();
  await page.getByRole('textbox', { name: 'Depth of window 1' }).fill('0.04');
  await expect(page.getByText('Two depths or more give your bite rate')).toBeVisible();
  await page.getByRole('textbox', { name: 'Depth of window 3' }).fill('0.088');
  await expect(page.getByText(/This strip counts as one job/)).toBeVisible();
  await expect(page.getByText(/From 1 of your jobs, one of them a test strip/)).toBeVisible();
  const moved = await minutes.innerText();
  await page.getByRole('button', { name: 'Show the plan without it' }).click();
  await expect(minutes).not.toHaveText(moved);
  await expectAccessible(page);
});
