import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { seedBaths } from './notebook-seed.ts';

test.use({ viewport: phone });

const bath = (id: string, name: string, salt: string, metalGroup: string, held: Record<string, number>) => ({
  version: 2,
  id,
  name,
  salt,
  water: 'deionised',
  metalGroup,
  events: [
    {
      type: 'mixed',
      at: 1_764_000_000_000,
      strength: 60,
      waterMl: 500,
      volumeMl: 500,
      heldMg: held,
    },
  ],
});
const shelf = [
  bath('silver', 'SILVER 1', 'NaNO3', 'silver', { Ag: 4000, Cu: 320 }),
  bath('brass', 'COPPER AND BRASS 1', 'NaCl', 'copper and brass', { Cu: 1400, Zn: 600 }),
  bath('nickel', 'NICKEL 1', 'NaCl', 'nickel', { Cu: 900, Ni: 300 }),
];

async function open(page: Page, name: string): Promise<void> {
  await seedBaths(page, shelf);
  await page.goto('/');
  await page.getByRole('link', { name: 'Baths' }).click();
  await page
    .getByRole('article', { name })
    .getByRole('link', { name: /Keep it or hand it over/ })
    .click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
}

const doses = (page: Page) => page.getByText(/Dissolve (about )?[\d.]+\sg of/);

test('a silver bath: smelt at first, handed over untreated, dosed only by the authority’s word', async ({
  page,
}) => {
  await open(page, 'SILVER 1');
  await expect(page.getByRole('row', { name: /silver 8000 4 5.mg\/L/ })).toBeVisible();
  await expect(page.getByRole('row', { name: /copper 640 0.32 not listed/ })).toBeVisible();
  await expect(doses(page)).toHaveCount(0);

  await page.locator('summary', { hasText: 'My authority allows it' }).click();
  await page.getByRole('textbox', { name: 'My authority allows it' }).fill('Waste office, 3 May');
  await page
    .getByRole('region', { name: 'Treat it first?' })
    .getByRole('button', { name: 'Write it down' })
    .click();
  await expect(page.getByText('Waste office, 3 May')).toBeVisible();
  // the word is there, but nobody has smelt at it
  await expect(doses(page)).toHaveCount(0);
  for (const look of ['It smells of ammonia, or pH is 9 or more', 'Not sure']) {
    await page.getByRole('radio', { name: look }).check();
    await expect(page.getByText(/do not screw it shut/i)).toBeVisible();
    await expect(doses(page)).toHaveCount(0);
  }
  await page.getByRole('radio', { name: 'No smell, no crust, pH below 9' }).check();
  await expect(doses(page)).toContainText(/2.46.g of table salt/);
  await expect(page.getByText(/Never more than 5.09.g in all/)).toBeVisible();
  await expectAccessible(page);

  await page.reload();
  await expect(page.getByText('Waste office, 3 May')).toBeVisible();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await page.getByRole('radio', { name: 'No smell, no crust, pH below 9' }).check();
  await expect(doses(page)).toHaveCount(0);

  await page.getByRole('textbox', { name: 'Price of a gram of silver' }).fill('1,20');
  await expect(page.getByText(/At most 4\sg: 4\.80/)).toBeVisible();

  await page.getByRole('radio', { name: 'Black crust, mirror or dark scum' }).check();
  await expect(page.getByText('It may explode at a touch.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Keep it', exact: true })).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'Hand it over, untreated' })).toHaveCount(0);
});

test('brass gets its window of pH, nickel never a dose; the service is saved once for all', async ({
  page,
}) => {
  await open(page, 'COPPER AND BRASS 1');
  await page.getByRole('textbox', { name: 'Who takes it here' }).fill('Town yard, Sat 9 to 12');
  await page
    .getByRole('region', { name: 'Hand it over, untreated' })
    .getByRole('button', { name: 'Write it down' })
    .click();
  await page.locator('summary', { hasText: 'My authority allows it' }).click();
  await page.getByRole('textbox', { name: 'My authority allows it' }).fill('Waste office, 3 May');
  await page
    .getByRole('region', { name: 'Treat it first?' })
    .getByRole('button', { name: 'Write it down' })
    .click();
  await expect(page.getByText(/Stop at pH 9 to 9.6/)).toBeVisible();
  await page.getByText('Codes a collector may use').click();
  await expect(page.getByText(/20 01 15\*/)).toBeVisible();

  await page.getByRole('link', { name: 'Baths' }).click();
  await page
    .getByRole('article', { name: 'NICKEL 1' })
    .getByRole('link', { name: /Keep it or hand it over/ })
    .click();
  await expect(page.getByText('Town yard, Sat 9 to 12')).toBeVisible();
  await expect(page.getByText(/it holds nickel: its sludge causes cancer/)).toBeVisible();
  await expect(doses(page)).toHaveCount(0);
  await expectAccessible(page);
});

test('the page fits 320 px', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 800 });
  await open(page, 'SILVER 1');
  await page.getByRole('radio', { name: 'No smell, no crust, pH below 9' }).check();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
