import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import type { ReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import { knownAmounts, knownText } from '../../../src/lib/words/en/known-amounts.ts';
import type { KnownAmount } from '../../../src/lib/words/en/known-amounts.ts';
import { phrase } from '../../../src/lib/words/en/render.ts';
import { metric } from '../print/definition-texts.ts';

const inches: ReadingUnits = { length: 'in', temperature: 'degF' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const names = Object.keys(knownAmounts) as KnownAmount[];

const folder = new URL('../../../src/lib/words/en/', import.meta.url);
const sources = readdirSync(folder).map((file) => readFileSync(new URL(file, folder), 'utf8'));

describe('amounts that texts name', () => {
  test.each([
    ['stopTemperature', '40 °C', '104 °F'],
    ['gasTemperature', '25 °C', '77 °F'],
    ['gasPressure', '1 atm', '1 atm'],
    ['planVolts', '9.5 V', '9.5 V'],
    ['adapterVolts', '3 to 9.5 V', '3 to 9.5 V'],
    ['silverStrengths', '50 to 100 g/L', '50 to 100 g/L'],
    ['dampOverDry', '5 to 20', '5 to 20'],
    ['trace', '1 %', '1 %'],
  ] as const)('%s is read as %s, or %s', (name, metrically, inInches) => {
    expect(plain(knownText(name, defaultReadingUnits))).toBe(metrically);
    expect(plain(knownText(name, inches))).toBe(inInches);
  });
  test.each(names)('%s fills a blank, is named by a text and is left metric for nobody', (name) => {
    expect(phrase(`{${name}}`, {}, inches)).toBe(knownText(name, inches));
    expect(sources.some((source) => source.includes(`{${name}}`))).toBe(true);
    expect(knownText(name, inches)).not.toMatch(metric);
  });
  test('give way to what a rule found itself, and nothing else fills a blank', () => {
    expect(plain(phrase('{lid}', { lid: { value: 3, unit: 'L' } }, inches))).toBe('3 L');
    expect(() => phrase('{notKnown}', {}, inches)).toThrow(RangeError);
  });
});
