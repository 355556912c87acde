import AxeBuilder from '@axe-core/playwright';
import { expect } from '@playwright/test';
import type { Page } from '@playwright/test';

/** What axe finds serious or critical on the page as it stands, a line each. @param rules those asked; all without */
export async function graveFaults(page: Page, rules?: readonly string[]): Promise<string[]> {
  // in one piece, without a second page to put results of frames together: there are no frames
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations } = await (rules ? axe.withRules([...rules]) : axe).analyze();
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
    // in the dark nothing but the colours is another
    const rules = colorScheme === 'dark' ? ['color-contrast'] : undefined;
    expect(await graveFaults(page, rules), colorScheme).toEqual([]);
  }
  await expectNothingSideways(page);
}

export const phone = { width: 390, height: 844 } as const;
