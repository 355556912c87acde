import { readdirSync, readFileSync } from 'node:fs';
import { storeTexts } from '../../src/lib/words/en/waste.ts';
import { describe, expect, test } from 'vitest';

/**
 * No text anywhere advises a drain, or a place that leads to one, for anything but unused table salt or
 * baking soda. Every sentence of every file that holds words is read.
 */
const places = /\b(drains?|sink|toilet|sewer|gully|gutter|septic|soil|ground|street|flush(ed)?|rubbish)\b/i;
const away =
  /\b(pour|poured|tip|tipped|empty|emptied|rinse|rinsed|wash|washed)\s+(it\s+|them\s+)?(away|out|down)\b/i;
const refuses = /\b(never|nothing|none|neither|nor|not|no)\b/i;
const unused = /\bunused (table salt|baking soda)\b/i;
const held = /\b(bath|used|silver|copper|brass|nickel|nitrate|sludge)\b/i;

/** The name of an answer that its own fix forbids, and a shop's name for lye. */
const names = ['drain cleaner'];

const advises = (sentence: string): boolean =>
  (places.test(sentence) || away.test(sentence)) &&
  !refuses.test(sentence) &&
  !(unused.test(sentence) && !held.test(sentence)) &&
  !names.some((name) => sentence.includes(name));

const root = new URL('../../src/', import.meta.url);
const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((path) =>
  /^(lib\/(words|ui|print)|routes)\/.*\.(ts|svelte|md)$/.test(path.replaceAll('\\', '/')),
);
/** Comments speak to us, not to makers. */
const spoken = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\/|<!--[\s\S]*?-->|<style>[\s\S]*?<\/style>/g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(/\bGUTTER\b/g, '')
    .replace(/\n\s*/g, ' ');
const sentences = files.flatMap((path) =>
  spoken(readFileSync(new URL(path, root), 'utf8'))
    .split(/(?<=[.;!?])\s|(?<=')(?=,)/)
    .map((sentence) => ({ path, sentence })),
);

describe('the drain', () => {
  test('is read in every file of words', () => {
    expect(files.length).toBeGreaterThan(100);
    expect(sentences.filter(({ sentence }) => places.test(sentence)).length).toBeGreaterThan(5);
  });
  test('is advised nowhere', () => {
    expect(sentences.filter(({ sentence }) => advises(sentence))).toEqual([]);
  });
  test.each([
    'Pour the bath down the drain.',
    'Thin it with water, then flush it.',
    'The first rinse may go into the toilet.',
    'Pour it away with plenty of water.',
    'Unused table salt and silver go down the drain.',
  ])('would be found: %s', (sentence) => {
    expect(advises(sentence)).toBe(true);
  });
  test('may take what never held metal', () => {
    expect(advises('Unused table salt may go down the drain.')).toBe(false);
  });
  test('is no way that a bath can be put away', () => {
    const ways: readonly string[] = storeTexts.ways.map(({ value }) => value);
    expect(ways.toSorted()).toEqual(['handed-over', 'shelf']);
  });
});
