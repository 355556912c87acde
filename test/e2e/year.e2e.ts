import { expect, test } from '@playwright/test';
import { finishedJob } from '../fixtures/finished-job.ts';
import { expectAccessible, phone } from './axe.ts';
import { seed } from './notebook-seed.ts';

test.use({ viewport: phone });

test('a year on one page, and what the bench has taught of it', async ({ page }) => {
  const jobs = Array.from({ length: 40 }, (_, n) =>
    finishedJob(
      `job ${String(n)}`,
      `Piece ${String(n)}`,
      new Date(2026, n % 12, 1 + (n % 28), 12).getTime(),
      {
        result: {
          depthUm: 60 + ((n * 37) % 70),
          massBeforeG: null,
          massAfterG: null,
          note: '',
        },
      },
    ),
  );
  await seed(page, jobs);
  await page.goto('/');
  await page.getByRole('link', { name: 'A year on one page' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A year at the bench');
  await expect(page.getByRole('status')).toHaveText(
    /^2026: 40 jobs, 40 pieces\. Of 40 measured, \d+ came within/,
  );
  await expect(page.getByRole('img', { name: /Each measured job in its month/ })).toBeVisible();
  await expectAccessible(page);
  for (const format of ['A4', 'Letter']) {
    const pdf = await page.pdf({
      format,
      ...(process.env['ETCHWRIGHT_SHOT'] ? { path: '/tmp/year.pdf' } : {}),
    });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
  }
  if (process.env['ETCHWRIGHT_SHOT']) {
    await page.screenshot({ path: '/tmp/year.png', fullPage: true });
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.screenshot({ path: '/tmp/year-desk.png', fullPage: true });
  }
  await page.goto('/look-back/');
  await expect(page.getByText(/^Silver with a nitrate, 40 jobs/).first()).toBeVisible();
  await expect(page.getByText(/^Volts and amps, noted at 40 settings/)).toBeVisible();
  await expectAccessible(page);
});
