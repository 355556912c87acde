import { expect, test } from '@playwright/test';
import { jobAt } from '../fixtures/job-at.ts';
import { expectAccessible, phone } from './axe.ts';
import { atHeading } from './job-walk.ts';
import { openJob, seed, seedBaths } from './notebook-seed.ts';

test.use({ viewport: phone });

const bath = (id: string, name: string, metalGroup: string): object => ({
  version: 2,
  id,
  name,
  salt: 'NaNO3',
  water: 'deionised',
  metalGroup,
  events: [{ type: 'mixed', at: 1_764_000_000_000, strength: 60, waterMl: 980, volumeMl: 1000, heldMg: {} }],
});

test('a bath of the shelf that is tapped is marked, and one for another metal is no empty shelf', async ({
  page,
}) => {
  await seed(page, [
    jobAt('silver', 'electrolyte.recipe'),
    jobAt('copper', 'electrolyte.recipe', { 'piece.metal': 'C11000' }),
  ]);
  await page.goto('/');
  await seedBaths(page, [bath('s', 'SILVER 1', 'silver')]);
  await page.goto('/job/?id=silver&at=electrolyte.salt');
  const shelved = page.getByRole('radio', { name: /^SILVER 1/ });
  await expect(shelved).not.toBeChecked();
  await shelved.check();
  await expect(shelved).toBeChecked();
  await expect(page.getByRole('radio', { name: /^Mix a new bath/ })).not.toBeChecked();
  await page.goto('/job/?id=copper&at=electrolyte.salt');
  await expect(page.getByText('1 bath on the shelf, none for this metal: one jar for each.')).toBeVisible();
  await expect(page.getByText('The shelf is empty so far')).toHaveCount(0);
});

test('a copy marks on its plan the bath that is gone, and leads to where another is chosen', async ({
  page,
}) => {
  const gone = { 'bath.from': 'shelf', 'bath.record': 'SILVER 9' };
  await openJob(page, { ...jobAt('again', 'settings.plan', gone), copyOf: 'first' }, 'settings.plan');
  await atHeading(page, 'Your plan');
  await expect(page.getByText('Something of this no longer fits: it is marked.')).toBeVisible();
  const line = page.getByRole('listitem').filter({ hasText: 'SILVER 9' });
  await expect(line).toContainText(
    'This bath is not on your shelf any more: choose another, or mix a new one.',
  );
  await expectAccessible(page);
  await line.getByRole('button', { name: /^Change: SILVER 9/ }).click();
  await atHeading(page, 'Which bath?');
});

test('a depth that no sheet can have holds Continue, and is not dropped', async ({ page }) => {
  await openJob(page, jobAt('deep', 'neutralise.rinsing'), 'neutralise.result');
  await page.getByText('Weighed or measured it some other way?').click();
  const depth = page.getByRole('textbox', { name: 'Depth', exact: false }).first();
  await depth.fill('7');
  await expect(page.getByText(/^More than the sheet/)).toBeVisible();
  const title = await page.getByRole('heading', { level: 1 }).innerText();
  await page.getByRole('button', { name: 'Continue' }).click();
  await expect(depth).toBeFocused();
  await expect(depth).toHaveValue('7');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
});
