import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { finishedJob, liftedJob } from '../fixtures/finished-job.ts';
import { answerHold } from './demo-walk.ts';
import { seed } from './notebook-seed.ts';

test.use({ viewport: phone });

test('a class: counts, the evening, a job of one’s own, and the pack', async ({ page }) => {
  await seed(page, [finishedJob('own', 'Fern', Date.UTC(2026, 10, 1))]);
  await page.goto('/');
  await page.getByRole('link', { name: 'An evening class' }).click();
  await expect(page.getByText('20 pairs of whole nitrile gloves')).toBeVisible();
  await expect(page.getByText(/^Too long by \d+\s?min/)).toBeVisible();
  await expectAccessible(page);
  await page.getByLabel('Learners at each').fill('3');
  await expect(page.getByText('28 pairs of whole nitrile gloves')).toBeVisible();
  await page.getByLabel('Stations').fill('400');
  await expect(page.getByText('A whole number from 1 to 20.')).toBeVisible();
  await expect(page.getByText('28 pairs of whole nitrile gloves')).toHaveCount(0);
  await page.getByLabel('Stations').fill('3');
  await page.getByLabel('The job of every station').selectOption({ label: 'Fern' });
  await expect(page.getByText(/^3 pieces of sterling/)).toBeVisible();
  await expect(page.getByText('3 tubs, plastic or glass')).toBeVisible();
  await expect(page.getByText(/^It takes \d+\s?min of 120\s?min\.$/)).toBeVisible();
  // two sheets, three cards, two pages to hang up, one sheet of labels
  await page.getByRole('button', { name: 'Make the papers' }).click();
  await expect(page.getByRole('img', { name: 'Evening class, page 8' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('img', { name: 'Evening class, page 9' })).toHaveCount(0);
});

test('a depth that fits is what the class bites, until the job’s own is taken again', async ({ page }) => {
  await page.goto('/class/');
  await expect(page.getByText(/^Too long by \d+\s?min/)).toBeVisible();
  await page.getByRole('button', { name: /^Bite 0\.0\d+\s?mm this evening$/ }).click();
  await expect(page.getByText(/^It takes \d+\s?min of 120\s?min\.$/)).toBeVisible();
  await expect(page.getByText(/^Cards, minutes and waste are for 0\.0\d+\s?mm/)).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: /^Back to 0\.1\s?mm/ }).click();
  await expect(page.getByText(/^Too long by \d+\s?min/)).toBeVisible();
});

test('whose piece is which stays in this browser, and a list too long is told', async ({ page }) => {
  await page.goto('/class/');
  const first = page.getByLabel('Station 1: 12 pieces');
  await first.fill('Ada\nB.');
  await page.reload();
  await expect(first).toHaveValue('Ada\nB.');
  await first.fill(Array.from({ length: 13 }, (_, n) => String(n)).join('\n'));
  await expect(page.getByText('One a line: this station has 12 pieces.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Make the papers' })).toBeDisabled();
  await page.getByRole('button', { name: 'Number the pieces' }).click();
  await expect(page.getByLabel('Station 2: 12 pieces')).toHaveValue(/^13\n14/);
  await page.getByRole('button', { name: 'Clear the names' }).click();
  await expect(first).toHaveValue('');
});

test('in a class the clock stays off until an adult and another have put their initials', async ({
  page,
}) => {
  const job = liftedJob('taught', 'Taught', Date.now() - 60_000);
  await seed(page, [{ ...job, draft: { ...job.draft, 'place.use': 'teaching' } }]);
  await page.goto('/job/?id=taught');
  const seen = page.getByRole('group', { name: 'An adult has a hand on the supply' });
  await expect(seen).toBeVisible();
  await answerHold(page);
  const say = page.getByRole('button', { name: 'We have both seen it' });
  await seen.getByLabel('Adult in charge').fill('ab');
  await seen.getByLabel('Who looked with them').fill('ab');
  await say.click();
  await expect(page.getByText('Two people, each their own')).toBeVisible();
  await seen.getByLabel('Who looked with them').fill('cd');
  await expectAccessible(page);
  await say.click();
  await expect(page.getByText('Seen by AB and CD.')).toBeVisible();
});
