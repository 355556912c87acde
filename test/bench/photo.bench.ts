import { expect, test } from '@playwright/test';
import { jobAt } from '../fixtures/job-at.ts';
import { openJob } from '../e2e/notebook-seed.ts';
import { largePhotograph } from '../e2e/photograph.ts';

/** ms; decoding on the page itself takes a second and more */
const FROZEN = 600;

test('a photo of 24 million pixels freezes the page for no longer than 0.6 s', async ({ page }) => {
  await openJob(page, jobAt('pendant', 'metal', { 'piece.area': 'later' }), 'metal.area');
  await page.getByText('Measure it from a drawing or a photo').click();
  const photo = await largePhotograph(page);
  await page.evaluate(() => {
    const longest = { ms: 0 };
    Object.assign(globalThis, { longest });
    let last = performance.now();
    const frame = (now: number) => {
      longest.ms = Math.max(longest.ms, now - last);
      last = now;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  await page
    .getByLabel('Choose a picture')
    .setInputFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer: photo });
  await expect(page.getByText(/^Bare metal/)).toBeVisible({ timeout: 30_000 });
  const ms = await page.evaluate(() => (globalThis as unknown as { longest: { ms: number } }).longest.ms);
  console.log(`photo of 24 million pixels: the page stood still for ${ms.toFixed(0)} ms at most`);
  expect(ms).toBeLessThan(FROZEN);
});
