import AxeBuilder from '@axe-core/playwright';
import { expect } from '@playwright/test';
import type { Page } from '@playwright/test';

/** Nothing serious or critical, in light and in dark, and nothing sticks out sideways. */
export async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).analyze();
    const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    expect(
      grave.map(({ id, nodes }) => `${colorScheme} ${id}: ${nodes.map(({ html }) => html).join(' ')}`),
    ).toEqual([]);
  }
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over, 'nothing sticks out sideways').toBeLessThanOrEqual(0);
}

export const phone = { width: 390, height: 844 } as const;
