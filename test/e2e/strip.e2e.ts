import { expect, test } from '@playwright/test';
import { mixedJob } from '../fixtures/finished-job.ts';
import { expectAccessible, phone } from './axe.ts';
import { answerHold } from './demo-walk.ts';
import { seed } from './notebook-seed.ts';

test.use({ viewport: phone });

test('a test strip: windows to the scrap, every look before power each time, a clock, and its own drawing', async ({
  page,
}) => {
  test.setTimeout(180_000);
  const begun = Date.UTC(2026, 10, 26, 9);
  await page.clock.install({ time: begun });
  await seed(page, [mixedJob('fern', 'Fern', begun - 60_000)]);
  await page.goto('/job/?id=fern');
  const title = page.getByRole('heading', { level: 1 });
  const press = (name: string | RegExp) => page.getByRole('button', { name }).last().click();
  await expect(title).toHaveText('Hang, clip and set');
  await page.getByText('a test strip first').click();
  await page.getByLabel('Scrap, wide').fill('20');
  await expect(page.getByText('Too small for four windows')).toBeVisible();
  await page.getByLabel('Scrap, wide').fill('60');
  await expect(page.getByText(/Each window 10 by 14.mm/)).toBeVisible();
  await expect(page.getByRole('img', { name: 'The scrap with its four windows' })).toBeVisible();
  await expectAccessible(page);
  const minutes = await page
    .getByRole('table')
    .filter({ hasText: 'Stop out after' })
    .locator('tbody td:nth-child(2)')
    .allInnerTexts();
  const marks = minutes.map((text) => parseFloat(text));
  await press('Bite the strip');

  for (let n = 0; n < 4; n += 1) {
    await expect(title).toHaveText('Stop and look: before power');
    await expect(page.getByText('This bite is for the test strip')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Clock on' })).toBeDisabled();
    await answerHold(page);
    await press('Clock on');
    await expect(title).toHaveText('The test strip bites');
    await expect(page.getByText(/^Set the supply to \d/)).toBeVisible();
    if (n === 0) await expectAccessible(page);
    const span = (marks[n] ?? 0) - (marks[n - 1] ?? 0);
    await page.clock.fastForward(Math.round((span + 0.1) * 60_000));
    await expect(page.getByText('Time for this window')).toBeVisible();
    await press('Stop');
    await expect(title).toHaveText('Is the supply off?');
    if (n === 1) {
      // a page that goes comes back to the same question
      await page.reload();
      await expect(title).toHaveText('Is the supply off?');
    }
    await press(/^Supply off/);
    await expect(title).toHaveText('Stop and look: before lifting');
    await answerHold(page);
    await press('Go on');
    await expect(title).toHaveText('Stop a window out');
    await expect(page.getByText(`cover window ${String(n + 1)} with varnish`)).toBeVisible();
    if (n < 3) await press('Look before power');
  }
  await press('Type the depths in');
  await expect(title).toHaveText('Hang, clip and set');
  for (const [n, depth] of ['0.04', '0.064', '0.2', '0.112'].entries()) {
    await page.getByRole('textbox', { name: `Depth of window ${String(n + 1)}` }).fill(depth);
  }
  await expect(page.getByText('Window 3 does not fit the others.')).toBeVisible();
  await expect(page.getByRole('img', { name: /Depths of the windows against their minutes/ })).toBeVisible();
  await page.getByRole('textbox', { name: 'Depth of window 3' }).fill('0.088');
  await expect(page.getByText('does not fit the others.')).toHaveCount(0);
  await expect(page.getByText(/From 1 of your jobs, one of them a test strip/)).toBeVisible();
  await expectAccessible(page);
  if (process.env['ETCHWRIGHT_SHOT']) await page.screenshot({ path: '/tmp/strip.png', fullPage: true });
});
