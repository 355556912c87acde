import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';

test('the start page names the app and asks nothing of another host', async ({ page, baseURL }) => {
  const problems: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== new URL(baseURL ?? '').origin) problems.push(request.url());
  });

  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Etchwright');
  await expect(page).toHaveTitle(/Etchwright/);
  await page.waitForLoadState('networkidle');
  expect(problems).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the start page has no accessibility fault in ${colorScheme} mode`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto('/');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual(
      [],
    );
  });
}

test('an unknown address shows a page, not a bare error', async ({ page }) => {
  const response = await page.goto('/no-such-page/');
  expect(response?.status()).toBe(404);
  await expect(page.getByText('404').first()).toBeVisible();
});
