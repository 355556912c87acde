import type { Page } from '@playwright/test';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** A label of a word or two is no sentence, and would make any page look easy. */
const LEAST_WORDS = 4;

/** Sentences that stand on the screen, each block's own text by itself. */
export async function sentencesOf(page: Page): Promise<string[]> {
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
export function gradeOf(sentences: readonly string[]): number {
  const words = sentences.flatMap((text) => text.split(' ').filter((word) => /\p{L}/u.test(word)));
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
}
