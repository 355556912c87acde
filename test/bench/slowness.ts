import type { Page } from '@playwright/test';

/** What a sum of thirty million takes on the machine that the bound is stated for, ms. */
const SUM = 45;

/** How many times slower this machine is than that one; 1 at least. */
export const slowness = (page: Page): Promise<number> =>
  page.evaluate((usual) => {
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      let sum = 0;
      for (let n = 1; n < 3e7; n += 1) sum += 1 / n;
      return sum > 0 ? performance.now() - start : NaN;
    });
    return Math.max(1, Math.min(...times) / usual);
  }, SUM);
