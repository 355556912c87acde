import { expect } from '@playwright/test';
import type { Page } from '@playwright/test';
import { checks } from '../../src/lib/procedure/checks.ts';
import { checkTexts } from '../../src/lib/words/en/checks.ts';

/** What is pressed where Continue is not it. */
const presses: Readonly<Record<string, RegExp>> = {
  'Mix, in this order': /^Mixed and labelled/,
  Biting: /^Stop/,
  'Is the supply off?': /^Supply off/,
  'Deep enough?': /^Deep enough/,
};

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
    for (const volts of ['8', '6', '5', '4', '3']) {
      await item.getByRole('textbox').fill(volts);
      await item.getByRole('button', { name: 'That is what I read' }).click();
      if ((await item.locator('legend').innerText()).includes('seen')) break;
    }
  }
}

/** The heading once it stands: between two steps one may show for a frame before its screen gives way. */
async function settled(page: Page): Promise<string> {
  const title = page.getByRole('heading', { level: 1 });
  for (let before = ''; ;) {
    const now = await title.innerText();
    if (now === before) return now;
    before = now;
    await page.waitForTimeout(100);
  }
}

/** Goes from any screen to the last, changing nothing: a job whose fields are all filled. */
export async function walkToSheet(page: Page, at: (heading: string) => Promise<void>): Promise<void> {
  const title = page.getByRole('heading', { level: 1 });
  // the page that started the job goes first
  await expect(title).toHaveText('What metal is the piece?', { timeout: 15_000 });
  for (let screens = 0; screens < 60; screens += 1) {
    const heading = await settled(page);
    await at(heading);
    if (heading === 'What was done') return;
    if (heading.startsWith('Stop and look')) await answerHold(page);
    if (heading.startsWith('Keep the bath')) await page.getByRole('radio', { name: /Keep it/ }).click();
    const name = heading.startsWith('Stop and look')
      ? /^(Go on|Clock on)/
      : (presses[heading] ?? /^Continue$/);
    await page.getByRole('button', { name }).last().click();
    await expect(title).not.toHaveText(heading, { timeout: 15_000 });
  }
  throw new Error('sixty screens and no end');
}
