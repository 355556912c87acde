import { describe, expect, test } from 'vitest';
import { resistFacts } from '../../../src/lib/core/facts/resists.ts';
import { worn } from '../../../src/lib/core/facts/wear.ts';
import { safeArea } from '../../../src/lib/print/cut-page.ts';
import { strip } from '../../../src/lib/print/strip-page.ts';
import { thingsOf, wearCard } from '../../../src/lib/print/wear-page.ts';
import { helpPages } from '../../../src/lib/words/en/help.ts';
import { airTexts, bodyTexts, eyeTexts, thingNames } from '../../../src/lib/words/en/wear.ts';
import { everyPlan, examples, planOf, print, readPages, squeeze } from './printed.ts';
import type { Page } from './printed.ts';

const plans = [...examples.map((name) => planOf(name)), ...everyPlan().filter((_, i) => i % 5 === 0)];

const pageOf = async (plan: (typeof plans)[number], kind: 'strip' | 'wear'): Promise<Page> => {
  const pages = await readPages(await print(plan, { kinds: [kind], marks: null }));
  expect(pages).toHaveLength(1);
  return pages[0] as Page;
};

/** Everything above the bar stands inside the outline, 5 mm from the trim. */
function expectInside(page: Page, { height, paper }: { height: number; paper: number }): void {
  const left = (paper - safeArea.width) / 2;
  const bottom = safeArea.margin + height;
  const held = page.items.filter(({ y }) => y < bottom + 6);
  expect(held.length).toBeGreaterThan(8);
  for (const { text, x, y, width } of held) {
    expect(x, text).toBeGreaterThanOrEqual(left + 5);
    expect(x + width, text).toBeLessThanOrEqual(left + safeArea.width - 5);
    expect(y, text).toBeLessThanOrEqual(bottom - 4);
  }
  // and the bar's own words inside what every printer prints
  const below = page.items.filter(({ y }) => y >= bottom + 6);
  expect(below.map(({ text }) => text).join(' ')).toContain('100 mm');
  expect(Math.max(...below.map(({ y }) => y))).toBeLessThan(safeArea.margin + safeArea.height);
}

describe.each(plans.map((plan) => [`${plan.job.piece.metal} in ${plan.job.bath.salt}`, plan] as const))(
  '%s',
  (_name, plan) => {
    const paper = plan.job.paper === 'A4' ? 210 : 215.9;

    test('the emergency strip says every line of first aid, in order, inside its outline', async () => {
      const page = await pageOf(plan, 'strip');
      let from = 0;
      for (const { name, lines } of helpPages) {
        from = page.squeezed.indexOf(squeeze(name), from);
        expect(from, name).toBeGreaterThan(0);
        for (const { text } of lines)
          expect(page.squeezed.indexOf(squeeze(text), from), text).toBeGreaterThan(from);
      }
      expectInside(page, { height: strip.height, paper });
      expect(Math.min(...page.items.map(({ size }) => size))).toBeGreaterThanOrEqual(8.5);
    });

    test('the card of what to wear has the words of each thing that is open, inside its outline', async () => {
      const page = await pageOf(plan, 'wear');
      const things = thingsOf(plan);
      expect(things.length).toBe(resistFacts[plan.job.resist].remover === null ? 2 : 3);
      for (const id of things) {
        const { eyes, body, air } = worn[id];
        for (const text of [eyeTexts[eyes], bodyTexts[body], airTexts[air]]) {
          // columns are read line by line: the words stand in order, with others between
          const words = text.split(' ');
          let at = 0;
          for (const word of words) {
            at = page.squeezed.indexOf(word, at);
            expect(at, `${thingNames[id]}: ${text}`).toBeGreaterThanOrEqual(0);
            at += word.length;
          }
        }
      }
      expectInside(page, { height: wearCard.height, paper });
    });
  },
);

test('a silver job in nitrate has its own lines on the strip, a copper job in table salt others', async () => {
  const silver = (await pageOf(planOf('seed-head-pendant'), 'strip')).squeezed;
  expect(silver).toContain('Asmellofammoniaatasilverbath:');
  expect(silver).not.toContain('Asmellofswimmingpool:');
  const copper = (await pageOf(planOf('wave-band-cuff'), 'strip')).squeezed;
  expect(copper).toContain('Asmellofswimmingpool:');
  expect(copper).not.toContain('ammoniaatasilverbath');
});
