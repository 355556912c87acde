import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { metalIds } from '../../src/lib/core/job/choices.ts';
import { figureUnits } from '../../src/lib/core/plan/outcome.ts';
import { symbolOf } from '../../src/lib/core/units/convert.ts';
import { names, textsIn, typedNumbers } from './typed-numbers.ts';

const folder = new URL('../../src/lib/words/en/', import.meta.url);
const files = readdirSync(folder)
  .filter((path) => path.endsWith('.ts'))
  .map((path) => ({ path, source: readFileSync(new URL(path, folder), 'utf8') }));

const ids = new Set<string>([...metalIds, ...Object.keys(figureUnits), 'm3/h']);
const isId = (text: string): boolean => ids.has(text) || symbolOf(text) !== null;

describe('texts', () => {
  test('are found', () => {
    expect(files.length).toBeGreaterThan(50);
  });
  test('take every amount from core', () => {
    expect(files.flatMap(({ path, source }) => typedNumbers(path, source, isId))).toEqual([]);
  });
  test.each(names)('need what may stand in them: $why', ({ text }) => {
    const texts = files.flatMap(({ source }) => textsIn(source, isId));
    expect(texts.some((one) => one.search(text) >= 0)).toBe(true);
  });
});

describe('the check of texts', () => {
  test.each([
    ['an amount', `const a = { text: 'Set 2 V or less.' };`],
    ['one beside a name', `const a = 'Brass C26000 at 3 V';`],
    ['one in a template', 'const a = (b: string) => `${b}, up to 35 °C`;'],
    ['one in words', `const a = 'Ten volts are never used.';`],
    ['one in a list', `const a = ['Wait 20 min.'];`],
    ['one that is put together', `const a = 'Wait ' + '20 min';`],
    ['one that is written out', `const a = \`Below \${amountText(35, 'degC', units)}\`;`],
    ['a bare one', 'const a = `${9.5} V`;'],
    ['one that only looks like an id', `const a = { label: '9.5' };`],
  ])('finds %s', (_, source) => {
    expect(typedNumbers('a.ts', source, isId)).toHaveLength(1);
  });
  test.each([
    `import { a } from './b2.ts';`,
    `const a = { 'above-4': 'Above', id: '0.02', value: '5' };`,
    `const a = b === '1' ? c['d2'] : 'Both';`,
    `const a = { label: 'Brass 70/30', hint: 'C260, CZ106, CuZn30' };`,
    `const a = amountText(limit, 'cm2', units, 3);`,
    'const a = `${plain(limit, 2)} V`;',
    `const a = b.replace(/c/, '$1').padStart(2, '0');`,
    `type A = '3' | 'A4';`,
    `const a = 'Two of them, four windows.';`,
  ])('passes %s', (source) => {
    expect(typedNumbers('a.ts', source, isId)).toEqual([]);
  });
});
