import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { finger, pendantBite, pendantJob, startJob, walk } from './job-walk.ts';

test.describe.configure({ timeout: 180_000 });

/** A label of a word or two is no sentence, and would make any page look easy. */
const LEAST_WORDS = 4;
const GRADE = 8;

/** Sentences that stand on the screen, each block's own text by itself. */
async function sentencesOf(page: Page): Promise<string[]> {
  const blocks = await page.evaluate(() =>
    [...document.querySelectorAll('main :is(h1, h2, p, li, legend, small, label, button, td, th, dt, dd)')]
      .filter((element) => element.checkVisibility())
      .map((element) => {
        const copy = element.cloneNode(true) as HTMLElement;
        // what is a block of its own is read there
        copy.querySelectorAll('h2, p, li, legend, small, label, button, svg, select').forEach((inner) => {
          inner.remove();
        });
        return copy.textContent.replace(/\s+/g, ' ').trim();
      }),
  );
  return blocks
    .flatMap((text) => text.split(/(?<=[.:;?])\s+/))
    .filter((text) => text.split(' ').filter((word) => /\p{L}/u.test(word)).length >= LEAST_WORDS);
}

/** Grade of the US school system that reads it, Flesch and Kincaid 1975. */
function gradeOf(sentences: readonly string[]): number {
  const words = sentences.flatMap((text) => text.split(' ').filter((word) => /\p{L}/u.test(word)));
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
}

test('the measure tells plain words from hard ones', () => {
  expect(gradeOf(['Put the gloves on.', 'Look at the clip and then lift the piece.'])).toBeLessThan(4);
  expect(
    gradeOf([
      'Electrochemical dissolution necessitates appropriate precautionary ventilation and individual protective equipment.',
    ]),
  ).toBeGreaterThan(15);
});

test('every screen of a job reads at the eighth grade or below', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await startJob(page);
  const grades: { heading: string; grade: number }[] = [];
  await walk(page, finger(page), [...pendantJob, ...pendantBite], async ({ heading }) => {
    const sentences = await sentencesOf(page);
    if (sentences.length > 0) grades.push({ heading, grade: gradeOf(sentences) });
  });
  expect(grades.length).toBeGreaterThan(25);
  expect(grades.filter(({ grade }) => grade > GRADE)).toEqual([]);
});
