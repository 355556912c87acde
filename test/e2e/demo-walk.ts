import type { Page } from '@playwright/test';
import { checks } from '../../src/lib/procedure/checks.ts';
import { checkTexts } from '../../src/lib/words/en/checks.ts';

/** Says of each thing at a hold what a maker sees who has done everything right. */
export async function answerHold(page: Page): Promise<void> {
  const items = page.locator('main li').filter({ has: page.locator('fieldset') });
  for (const item of await items.all()) {
    const asked = (await item.locator('legend').innerText()).split('\n')[0] ?? '';
    const check = checks.find(({ id }) => asked.startsWith(checkTexts[id].asks));
    if (check === undefined) throw new Error(`no check asks "${asked}"`);
    if (check.kind === 'choice') {
      const right = check.options.findIndex(({ ok }) => ok);
      await item.getByRole('button').nth(right).click();
      continue;
    }
    if (check.kind === 'initials') {
      for (const [n, letters] of ['ab', 'cd'].entries()) await item.getByRole('textbox').nth(n).fill(letters);
      await item.getByRole('button', { name: 'We have both seen it' }).click();
      continue;
    }
    // the meter stands where the plan has put the knob
    const readings =
      check.unit === 'V' ? ['8', '6', '5', '4', '3'] : ['1.5', '0.8', '0.4', '0.2', '0.1', '0.05'];
    for (const reading of readings) {
      await item.getByRole('textbox').fill(reading);
      await item.getByRole('button', { name: 'That is what I read' }).click();
      if ((await item.locator('legend').innerText()).includes('seen')) break;
    }
  }
}
