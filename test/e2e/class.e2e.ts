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
  await expect(page.getByText('3 pieces, cleaned beforehand')).toBeVisible();
  await expect(page.getByText(/^It takes \d+\s?min of 120\s?min\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Make the papers' }).click();
  await expect(page.getByRole('img', { name: 'Evening class, page 4' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('img', { name: 'Evening class, page 5' })).toHaveCount(0);
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
