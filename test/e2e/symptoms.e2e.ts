import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { jobAt } from '../fixtures/job-at.ts';
import { expectAccessible, phone } from './axe.ts';
import { atHeading, finger, pendantBite, pendantJob, walk } from './job-walk.ts';
import { openJob } from './notebook-seed.ts';

test.use({ viewport: phone });

/** Opens a sign under "Something looks wrong", and sees its three parts. */
async function opensSign(page: Page, sign: string, words: string): Promise<void> {
  await page.locator('summary', { hasText: 'Something looks wrong' }).click();
  await page.locator('summary', { hasText: sign }).click();
  const own = page.locator('details[open]', { hasText: sign }).last();
  for (const part of ['Likely cause', 'Now', 'Next time', words])
    await expect(own.getByText(part, { exact: part !== words })).toBeVisible();
}

test('each sign opens in its three parts from Help, without a job and without script', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    viewport: phone,
    baseURL: baseURL ?? '',
  });
  const page = await context.newPage();
  await page.goto('/help/');
  const signs = page.locator('main summary');
  expect(await signs.count()).toBeGreaterThan(15);
  await page.locator('summary', { hasText: 'swimming pool' }).click();
  await expect(page.getByText(/above all no acid/)).toBeVisible();
  await context.close();
});

test('Help with a sign open is accessible', async ({ page }) => {
  await page.goto('/help/');
  await page.locator('summary', { hasText: 'A hard black crust' }).click();
  await expect(page.getByText(/Power off first. Do not touch it/)).toBeVisible();
  await expectAccessible(page);
});

test('a sign is chosen while it bites, stays at the look, and all open at look, rinse and plan', async ({
  page,
}) => {
  await openJob(page, jobAt('pendant', 'etch.hold'));
  const hand = finger(page);
  await walk(page, hand, pendantJob.slice(-1));
  await atHeading(page, 'Biting');
  await hand.press('Something looks wrong');
  await hand.press('The resist lifts');
  const answer = page.getByRole('alert').filter({ hasText: 'The resist lifts' });
  for (const part of ['Power off first.', 'Likely cause', 'Now', 'Next time'])
    await expect(answer.getByText(part, { exact: true })).toBeVisible();
  await expectAccessible(page);
  await answer.getByRole('button', { name: 'Stop' }).click();
  await walk(page, hand, pendantBite.slice(1, 3));
  await atHeading(page, 'Deep enough?');
  await expect(page.getByText(/mend the mask, let it dry its full time/)).toBeVisible();
  await opensSign(page, 'Uneven: deeper at the edges', 'Current crowds at edges');
  await hand.press('Deep enough');
  await atHeading(page, 'Rinse, strip, dry');
  await opensSign(page, 'Pink or red film', 'Copper from the alloy');
});

test('on the plan of an adapter without amps nothing speaks of amps or knobs', async ({ page }) => {
  await openJob(
    page,
    jobAt('adapter', 'settings.plan', {
      'supply.kind': 'adapter',
      'supply.amps': 'no',
      'supply.volts': '5',
      'supply.maxAmps': '2',
    }),
    'settings.plan',
  );
  await atHeading(page, 'Your plan');
  await opensSign(page, 'The tub feels hot', 'hang the plate further off');
  await expect(page.locator('summary', { hasText: 'amps fall' })).toHaveCount(0);
});

test('the resist dries by a clock that outlives a reload, and the mask is drawn', async ({ page }) => {
  await openJob(page, jobAt('pendant', 'resist.masking'), 'resist.mask');
  await atHeading(page, 'Mask it');
  await expect(page.getByRole('img', { name: /The mask from above/ })).toBeVisible();
  await expect(page.getByText('The leaf is an example.')).toBeVisible();
  await expect(page.getByText(/Let it dry .*common practice, no source/)).toBeVisible();
  const hand = finger(page);
  await hand.press('It is painted');
  await expect(page.getByRole('timer')).toContainText(/^(1 h 0 min|59 min).* to go, dry at/);
  await expectAccessible(page);
  await page.waitForTimeout(1500);
  await page.reload();
  await expect(page.getByRole('timer')).toContainText(/^59 min/);
  await hand.press('Continue');
  await atHeading(page, 'Hang, clip and set');
});

test('the mask is drawn with the maker’s own artwork where the job has it', async ({ page }) => {
  const design = JSON.stringify({ columns: 6, rows: 2, cells: '0ff0f00ff0f0' });
  await openJob(
    page,
    jobAt('own', 'resist.masking', {
      'piece.area': 'area',
      'piece.openArea': '4',
      'piece.design': design,
      'resist.kind': 'vinyl',
    }),
    'resist.mask',
  );
  await atHeading(page, 'Mask it');
  await expect(page.getByText('Painted stays high, bare goes down.', { exact: true })).toBeVisible();
  // a sticker needs no drying
  await expect(page.getByRole('button', { name: 'It is painted' })).toHaveCount(0);
});
