import AxeBuilder from '@axe-core/playwright';
import { expect } from '@playwright/test';
import type { Page } from '@playwright/test';

/** What axe finds serious or critical on the page as it stands, a line each. */
export async function graveFaults(page: Page): Promise<string[]> {
  // in one piece, without a second page to put results of frames together: there are no frames
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

export async function expectNothingSideways(page: Page): Promise<void> {
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over, 'nothing sticks out sideways').toBeLessThanOrEqual(0);
}

/** Nothing serious or critical, in light and in dark, and nothing sticks out sideways. */
export async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await graveFaults(page), colorScheme).toEqual([]);
  }
  await expectNothingSideways(page);
}

export const phone = { width: 390, height: 844 } as const;
