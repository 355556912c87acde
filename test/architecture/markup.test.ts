import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { bareFaults, scriptsOf, scriptTextFaults, styleLines, textFaults } from './markup.ts';

const root = fileURLToPath(new URL('../../src', import.meta.url));

const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map((path) => path.split(sep).join('/'))
  // shown while developing only, never in a build
  .filter((path) => !/^(lib\/ui|routes)\/parts\//.test(path))
  .map((path) => ({ path, read: () => readFileSync(join(root, path), 'utf8') }));
const components = files.filter(({ path }) => path.endsWith('.svelte'));
const screenCode = files.filter(({ path }) => /^(lib\/ui|routes)\/.*\.ts$/.test(path));

describe('screens', () => {
  test('are found', () => {
    expect(components.length).toBeGreaterThan(100);
    expect(screenCode.length).toBeGreaterThan(20);
  });
  test('hold no text in their markup', () => {
    expect(components.flatMap(({ path, read }) => textFaults(path, read()))).toEqual([]);
  });
  test('hold no text in their scripts', () => {
    expect([
      ...components.flatMap(({ path, read }) => scriptTextFaults(path, scriptsOf(read()))),
      ...screenCode.flatMap(({ path, read }) => scriptTextFaults(path, read())),
    ]).toEqual([]);
  });
  test('take their controls from the kit', () => {
    const outside = components.filter(({ path }) => !path.startsWith('lib/ui/kit/'));
    expect(outside.flatMap(({ path, read }) => bareFaults(path, read()))).toEqual([]);
  });
  test('have 3000 lines of style of their own at most', () => {
    expect(components.reduce((sum, { read }) => sum + styleLines(read()), 0)).toBeLessThanOrEqual(3000);
  });
});

describe('the checks of screens', () => {
  test.each([
    ['a text', '<p>Bite</p>'],
    ['a text among others', '<p>{a} min left</p>'],
    ['a text in an expression', `<p>{a ? 'Yes' : ''}</p>`],
    ['a text in a template', '<p>{`${a} deep`}</p>'],
    ['a label that is read out', '<svg aria-label="A tub"></svg>'],
    ['a label that is chosen', `<Part label={a ? 'Deep' : 'Flat'} />`],
    ['a text in a block', '{#if a}{#each b as c}<b>Cold</b>{/each}{/if}'],
  ])('find %s', (_what, source) => {
    expect(textFaults('A.svelte', source)).toHaveLength(source.includes('Flat') ? 2 : 1);
  });
  test.each([
    '<p>{texts.bite}</p>',
    '<p>{a} · {b}</p>',
    '<title>{a} · Etchwright</title>',
    `<p class="cold deep">{t(a, 'piece.width')}</p>`,
    `{#if a === 'front'}<b>{b['some key']}</b>{/if}`,
    '<style>p { color: red }</style>',
  ])('pass %s', (source) => {
    expect(textFaults('A.svelte', source)).toEqual([]);
  });
  test('find texts in scripts, and pass ids, paths and what is thrown', () => {
    const texts = `const a = { label: 'Deep' }; const b = 'Not saved'; const c = \`\${a} of them\`;`;
    expect(scriptTextFaults('a.ts', texts)).toHaveLength(3);
    const none = `import a from 'b c'; const d = 'piece.width'; const e = 'M0 0V7'; throw new Error('a b c');`;
    expect(scriptTextFaults('a.ts', none)).toEqual([]);
  });
  test('find a bare control', () => {
    expect(bareFaults('A.svelte', '{#if a}<button>{b}</button>{/if}<Table />')).toHaveLength(1);
  });
  test('count lines of style', () => {
    expect(styleLines('<p></p><style>\n p {\n  margin: 0;\n }\n</style>')).toBe(3);
  });
});
