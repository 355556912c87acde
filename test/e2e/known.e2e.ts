import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { expectAccessible, phone } from './axe.ts';

test.use({ viewport: phone });

/** Taps links and buttons by name, one after another, from the start page. */
async function tap(page: Page, ...names: readonly (string | RegExp)[]): Promise<void> {
  expect(names.length, 'taps').toBeLessThanOrEqual(3);
  await page.goto('/');
  // a page that is not awake yet would follow a link and lose what a tap opens
  await page.waitForLoadState('networkidle');
  for (const name of names)
    await page.getByRole('link', { name }).or(page.getByRole('button', { name })).first().click();
}

test('sterling and table salt: no, why, and what instead, three taps from the start', async ({ page }) => {
  await tap(page, 'What is known', /^Pairings/, 'Sterling silver');
  await expect(page.getByRole('heading', { level: 2, name: 'Sterling silver' })).toBeInViewport();
  await expect(page.getByText('Take: sodium nitrate')).toBeInViewport();
  const tableSalt = page.getByRole('listitem').filter({ hasText: /^\s*Table salt/ });
  await expect(tableSalt).toContainText('Not this way');
  await expect(tableSalt).toContainText('Chloride seals silver under its own chloride: no bite.');
  await tableSalt.locator('summary').click();
  await expect(tableSalt).toContainText('Instead: Use sodium nitrate, about 60 g in a litre');
  await expectAccessible(page);
  await page.goBack();
  await expect(page.getByText('Which metal?')).toBeVisible();
  await expect(page.getByText('Copper’s salts all dissolve.')).toBeVisible();
});

test('my bath went yellow: two taps from the start', async ({ page }) => {
  await tap(page, /^Help now/, 'Yellow bath');
  const lines = page.getByRole('listitem');
  await expect(lines.first()).toHaveText('Switch the supply off. Leave the piece where it is.');
  await expect(lines.first()).toBeInViewport({ ratio: 1 });
  await expect(lines.filter({ hasText: 'Touch nothing wet' })).toHaveCount(1);
  await expect(lines.filter({ hasText: 'YELLOW, DO NOT TREAT' })).toHaveCount(1);
  await expect(page.getByText('copper that has not turned blue')).toBeVisible();
});

test('can I sell this brass: three taps from the start, with its date', async ({ page }) => {
  await tap(page, 'What is known', /^Selling/, 'Brass 70/30');
  const answer = page.getByRole('heading', { level: 3 });
  await expect(answer).toHaveText(/Brass 70\/30:\s+Yes, under its own name/);
  await expect(answer).toBeInViewport();
  await expect(page.getByText('Sheet brass may hold a trace of lead')).toBeInViewport();
  await expect(page.getByText('jewellery holds less than 0.05 % of lead').first()).toBeVisible();
  await page.getByRole('button', { name: 'Leaded brass' }).click();
  await expect(answer).toHaveText(/Leaded brass:\s+Not as jewellery/);
  await expect(page.getByText('holds 2.75 % of lead')).toBeVisible();
  await page.getByRole('button', { name: 'Yellow, not sure which' }).click();
  await expect(answer).toHaveText(/Not until you know what it is/);
  await expect(page.getByText(/^Read \d{4}-\d{2}\./).first()).toBeVisible();
  await expectAccessible(page);
});

test('the lines of law follow the country', async ({ page }) => {
  await page.goto('/known/law/');
  await page.waitForLoadState('networkidle');
  await expect(page.getByText('Great Britain: ammonium nitrate')).toBeVisible();
  await page.getByLabel('Country').fill('dk');
  await expect(page.getByText('Denmark: the public may not buy')).toBeVisible();
  await expect(page.getByText('Great Britain: ammonium nitrate')).toHaveCount(0);
  await page.getByLabel('Country').fill('d');
  await expect(page.getByText('Country: d found; its name is expected')).toBeVisible();
  await expect(page.getByText('Great Britain: ammonium nitrate')).toBeVisible();
});

test('two amounts give the rest; a refusal names field, range and a value that is taken', async ({
  page,
}) => {
  await page.goto('/known/mixing/');
  await page.waitForLoadState('networkidle');
  await page.getByLabel('Salt', { exact: true }).first().selectOption('NaCl');
  await page.locator('[id="mix.water"]').fill('1000');
  await page.locator('[id="mix.massPercent"]').fill('30');
  await page.getByRole('button', { name: 'Work it out' }).click();
  const problem = page.getByRole('alert');
  await expect(problem).toContainText('The share by mass: found 30');
  await expect(problem).toContainText('the nearest is 26');
  await page.locator('[id="mix.massPercent"]').fill('10');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // CRC Handbook, concentrative properties of sodium chloride: 10 % at 20 °C is 1.0707 g/cm³ and 1.832 mol/L
  const row = (name: string) => page.locator('dl div').filter({ hasText: name });
  await expect(row('Density')).toContainText('1.071 g/cm³');
  await expect(row('Moles per litre')).toContainText('1.832 mol/L');
  await expectAccessible(page);
});

test('a jar of unknown strength: 100 mL on the scale give a range', async ({ page }) => {
  await page.goto('/known/mixing/');
  await page.waitForLoadState('networkidle');
  await page.getByText('What a jar of unknown strength holds').click();
  await page.locator('[id="mix.weight"]').fill('');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByRole('alert')).toContainText('Missing: the weight. Type a number.');
  await page.locator('[id="mix.weight"]').fill('106,5');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // CRC Handbook: sodium nitrate 10 % at 20 °C is 1.0674 g/cm³
  // 0.0024 less is 0.35 % less, at 0.007 g/cm³ a per cent; half of 1 g and half of 1 % are 0.7 % of the density, ± 1.7 % by mass at 5 and 95 %
  await expect(page.getByText('Share by mass, water-free salt: 9.7 %, likely 8.0 to 11 %')).toBeVisible();
  await expectAccessible(page);
});

test('every figure reaches its source in two taps', async ({ page }) => {
  await page.goto('/');
  await page.waitForLoadState('networkidle');
  await page.getByText('Three jobs, planned').click();
  await page
    .getByText(/^Every figure/)
    .first()
    .click();
  const figure = page.locator('.figure').first();
  await figure.getByText('How?').click();
  const source = figure.getByRole('link').first();
  const title = (await source.innerText()).trim();
  await source.click();
  await expect(page).toHaveURL(/\/known\/sources\/#\w+$/);
  const entry = page.locator('li:target');
  await expect(entry).toContainText(title);
  await expect(entry).toBeInViewport();
  await expect(entry).toContainText('Figures:');
});

test('the pages are accessible and fit 320 px', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 640 });
  for (const path of ['', 'pairings/', 'pairings/#C11000', 'pairings/#gold', 'mixing/', 'law/', 'sources/']) {
    await page.goto(`/known/${path}`);
    await expectAccessible(page);
  }
});

test('on a wide screen the whole table stands, and a mark opens its sentence', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/known/pairings/');
  const cell = page.getByRole('button', {
    name: 'Sterling silver, Table salt (sodium chloride): Not this way',
  });
  await cell.click();
  await expect(page.getByRole('status').filter({ hasText: 'Chloride seals silver' })).toBeInViewport();
  await expect(page.getByRole('rowheader')).toHaveCount(34);
  await expectAccessible(page);
});
