import { expect, test } from '@playwright/test';
import { worn } from '../../src/lib/core/facts/wear.ts';
import { expectAccessible, phone } from './axe.ts';

test.use({ viewport: phone });

test('which gloves for acetone: two taps from the start page', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('link', { name: 'What to wear' }).click();
  await page.getByRole('link', { name: /^Acetone in/ }).click();
  const gloves = page.getByRole('listitem');
  await expect(gloves.first()).toHaveText(/Wear\s*Butyl rubber/);
  await expect(gloves.first()).toBeInViewport({ ratio: 1 });
  await expect(gloves.filter({ hasText: 'Thin nitrile' })).toHaveText(
    /Not this\s*Thin nitrile, disposable\s*through in under 4.min/,
  );
  await expect(page.getByText('label or data sheet of your own bottle wins')).toBeVisible();
});

test('every thing has its page, with no serious fault', async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto('/wear/');
  await expectAccessible(page);
  const addresses = await page
    .getByRole('main')
    .getByRole('link')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href));
  expect(addresses.toSorted()).toEqual(
    Object.keys(worn)
      .map((thing) => new URL(`/wear/${thing}/`, page.url()).href)
      .toSorted(),
  );
  for (const address of addresses) {
    await page.goto(address);
    for (const name of ['Hands', 'Eyes', 'Body', 'Air', 'First aid', 'On its label']) {
      await expect(page.getByRole('heading', { name })).toBeVisible();
    }
  }
  for (const one of ['acetone', 'silver-bath', 'copper-sulfate', 'lye']) {
    await page.goto(`/wear/${one}/`);
    await expectAccessible(page);
  }
});

test('pictograms stand with their words, and only where the substance has any', async ({ page }) => {
  await page.goto('/wear/copper-sulfate/');
  await expect(page.getByText('corrosion: it burns eyes or skin')).toBeVisible();
  await expect(page.getByText('Causes serious eye damage')).toBeVisible();
  await page.goto('/wear/table-salt/');
  await expect(page.getByText('No hazard class for the dry salt.')).toBeVisible();
  await expect(page.locator('main img')).toHaveCount(0);
});
