import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';
import { readPages } from '../unit/print/printed.ts';
import { seedBaths } from './notebook-seed.ts';

test.use({ viewport: phone });

/** As version 1 kept it: sums, no events. */
const oldBath = {
  version: 1,
  id: 'b',
  name: 'SILVER 1',
  salt: 'NaNO3',
  strength: 60,
  water: 'deionised',
  madeAt: 1_764_000_000_000,
  lastUsedAt: 1_764_000_000_000,
  chargeAh: 0.4,
  dissolved: { Ag: 120 },
  metalGroup: 'silver',
  volumeMl: 500,
  where: 'shelf',
};

test('a bath is topped up, moved, handed over, and stands in the year’s note', async ({ page }) => {
  await seedBaths(page, [oldBath]);
  await page.goto('/');
  await page.getByRole('link', { name: 'Baths' }).click();
  const bath = page.getByRole('article', { name: 'SILVER 1' });
  await expect(bath).toContainText(/sodium nitrate, 60.g\/L, 500.mL/);
  await expect(bath).toContainText(/Holds Ag 120.mg\/L/);

  await bath.getByText('Top up or strengthen').click();
  await bath.getByRole('textbox', { name: 'Water added' }).fill('lots');
  await bath.getByRole('button', { name: 'Write it down' }).first().click();
  await expect(bath.getByText('The water: found lots, expected 0 to 100000 mL.')).toBeVisible();
  await bath.getByRole('textbox', { name: 'Water added' }).fill('500');
  await bath.getByRole('button', { name: 'Write it down' }).first().click();
  await expect(bath).toContainText(/30.g\/L, 1000.mL/);
  await expect(bath).toContainText(/Holds Ag 60.mg\/L/);
  await expectAccessible(page);

  await bath.locator('summary', { hasText: 'Hand it over' }).click();
  await bath.getByRole('textbox', { name: 'Hand it over' }).fill('Town collection');
  await bath.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(bath).toContainText('Handed over: Town collection.');
  const line = page
    .getByRole('region', { name: /Waste note of a year/ })
    .getByRole('row', { name: /SILVER 1/ });
  await expect(line).toContainText(/Ag 0\.06\sg/);
  await expect(line).toContainText('Town collection');

  await page.reload();
  await expect(bath).toContainText('Handed over: Town collection.');
  await bath.getByRole('button', { name: 'Put it back on the shelf' }).click();
  await expect(page.getByText('Nothing was handed over in this year.')).toBeVisible();
});

test('a use is corrected by a later word, and the sums follow', async ({ page }) => {
  await seedBaths(page, [oldBath]);
  await page.goto('/');
  await page.getByRole('link', { name: 'Baths' }).click();
  const bath = page.getByRole('article', { name: 'SILVER 1' });
  await expect(bath).toContainText(/0.40?.A·h so far/);
  await bath.locator('summary', { hasText: 'Correct a use' }).click();
  await bath.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(bath.getByText('Amp-hours: found nothing, expected 0 to 1000.')).toBeVisible();
  await bath.getByRole('radio').check();
  await bath.getByRole('textbox', { name: 'Amp-hours' }).fill('0,2');
  await bath.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(bath).toContainText(/0.20?.A·h so far/);
  await expect(bath).toContainText(/Holds Ag 60.mg\/L/);
  await bath.locator('summary', { hasText: 'What happened to it' }).click();
  await expect(bath.getByText(/Used: 0.4.A·h/)).toBeVisible();
  await expect(bath.getByText(/Used: 0.2.A·h/)).toBeVisible();
});

test('labels are printed again, from the first free place of the sheet', async ({ page }) => {
  await seedBaths(page, [oldBath, { ...oldBath, id: 'c', name: 'SILVER 2', dissolved: { Ag: 900 } }]);
  await page.goto('/');
  await page.getByRole('link', { name: 'Baths' }).click();
  const labels = page.getByRole('region', { name: 'Bath labels' });
  await expect(labels.getByRole('button', { name: 'Make the papers' })).toBeDisabled();
  await labels.getByRole('button', { name: 'more: SILVER 1' }).click();
  for (let i = 0; i < 2; i += 1) await labels.getByRole('button', { name: 'more: SILVER 2' }).click();
  await labels.getByRole('radio', { name: 'US Letter' }).check();
  await labels.getByText('3', { exact: true }).click();
  await labels.getByRole('button', { name: 'Make the papers' }).click();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    labels.getByRole('link', { name: 'Save the file' }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe('bath-labels.pdf');
  const pages = await readPages(new Uint8Array(await readFile(await saved.path())));
  expect(pages).toHaveLength(2);
  expect(pages[0]?.width).toBeCloseTo(792, 0);
  expect(pages[0]?.squeezed).toContain('silver120mg/L');
  expect(pages[1]?.squeezed).toContain('silver900mg/L');
  await expectAccessible(page);
  // the sheet that was begun goes in again where this print ended
  await page.reload();
  await expect(labels.getByRole('radio', { name: /^2 free/ })).toBeChecked();
});
