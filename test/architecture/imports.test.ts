import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { SourceFile } from './rooms.ts';
import {
  addressFaults,
  importFaults,
  lengthFaults,
  purityFaults,
  referencesOf,
  roomOf,
  timerFaults,
} from './rooms.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Files of src that hold program text, by kind. */
function read(kinds: RegExp): SourceFile[] {
  return readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .map((path) => ['src', ...path.split(sep)].join('/'))
    .filter((path) => kinds.test(path))
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

const programs = read(/\.(ts|js|mjs|svelte)$/).filter(({ path }) => !path.endsWith('.d.ts'));
const texts = read(/\.(ts|js|mjs|svelte|css|html)$/);

const at = (path: string, text: string): SourceFile => ({ path, text });

describe('the sources', () => {
  test('are found', () => {
    expect(programs.map(({ path }) => path)).toContain('src/routes/+layout.svelte');
    expect(texts.map(({ path }) => path)).toContain('src/lib/ui/tokens.css');
  });
  test('import only what their room may', () => {
    expect(programs.flatMap(importFaults)).toEqual([]);
  });
  test('keep clock, chance and the outside world out of core', () => {
    expect(programs.flatMap(purityFaults)).toEqual([]);
  });
  test('keep timers in session', () => {
    expect(programs.flatMap(timerFaults)).toEqual([]);
  });
  test('are at most 400 lines a file', () => {
    expect(texts.flatMap(lengthFaults)).toEqual([]);
  });
  test('name no language: what bundles them says which', () => {
    const outside = texts.filter(({ path }) => roomOf(path) !== 'words');
    expect(outside.length).toBeGreaterThan(200);
    const bundlers = ['svelte.config.js', 'test/bench/bundled.mjs'].map((path) =>
      at(path, readFileSync(join(root, path), 'utf8')),
    );
    const naming = [...outside, ...bundlers].filter(({ text }) => /words\/[a-z]{2}\b/.test(text));
    expect(naming.map(({ path }) => path)).toEqual([]);
  });
  test('hold no web address outside facts and words', () => {
    expect(texts.flatMap(addressFaults)).toEqual([]);
  });
});

describe('the import check', () => {
  test.each([
    ['a later room of core', 'src/lib/core/units/a.ts', `import { x } from '../plan/plan.ts';`],
    ['a room beside it', 'src/lib/core/field/a.ts', `import { x } from '../facts/salts.ts';`],
    ['a room outside core', 'src/lib/core/plan/a.ts', `import { x } from '$words/en.ts';`],
    ['a dynamic import', 'src/lib/session/a.ts', `await import('../print/make-pdf.ts');`],
    ['a re-export', 'src/lib/words/a.ts', `export * from '../ui/button.ts';`],
    ['a type import', 'src/lib/core/units/a.ts', `import type { Plan } from '../plan/plan.ts';`],
    ['an inline type import', 'src/lib/work/a.ts', `type A = import('../ui/a.ts').A;`],
    ['a worker by address', 'src/lib/session/a.ts', `new URL('../print/pdf.worker.ts', import.meta.url);`],
    ["procedure's values", 'src/lib/notebook/a.ts', `import { machine } from '../procedure/machine.ts';`],
    [
      "core's values",
      'src/routes/+page.svelte',
      `<script>import { x } from '$lib/core/units/x.ts';</script>`,
    ],
    ['the PDF library', 'src/lib/ui/a.ts', `import pdfMake from 'pdfmake/build/pdfmake';`],
    ['Node', 'src/lib/print/a.ts', `import { readFileSync } from 'node:fs';`],
    ['a package', 'src/lib/core/plan/a.ts', `import { createActor } from 'xstate';`],
    ['a folder without a room', 'src/lib/ui/a.ts', `import { x } from '$lib/utils/x.ts';`],
    ['a computed name', 'src/lib/ui/a.ts', 'await import(`./${name}.ts`);'],
    ['a file outside src', 'src/lib/core/units/a.ts', `import x from '../../../../package.json';`],
  ])('flags %s', (_what, path, text) => {
    expect(importFaults(at(path, text))).toHaveLength(1);
  });

  test.each([
    ['the room itself', 'src/lib/core/plan/a.ts', `import { x } from './b.ts';`],
    ['an earlier room', 'src/lib/core/chemistry/a.ts', `import { x } from '../facts/salts.ts';`],
    ["procedure's types", 'src/lib/notebook/a.ts', `import type { Event } from '$lib/procedure/events.ts';`],
    ["core's types", 'src/routes/a.ts', `import type { Plan } from '$lib/core/plan/plan.ts';`],
    ["a route's own types", 'src/routes/a.ts', `import type { PageProps } from './$types';`],
    ['the PDF library', 'src/lib/print/a.ts', `import pdfMake from 'pdfmake/build/pdfmake';`],
    ['a pure package', 'src/lib/core/plan/a.ts', `import * as v from 'valibot';`],
  ])('passes %s', (_what, path, text) => {
    expect(importFaults(at(path, text))).toEqual([]);
    expect(referencesOf(at(path, text))).toHaveLength(1);
  });

  test('flags a file in no room', () => {
    expect(importFaults(at('src/lib/utils/a.ts', ''))).toHaveLength(1);
    expect(importFaults(at('src/lib/core/a.ts', ''))).toHaveLength(1);
  });
});

describe('the purity check', () => {
  test.each([
    'Date.now()',
    'new Date(0)',
    'Math.random()',
    'performance.now()',
    'console.log(1)',
    'process.exit()',
    "fetch('x')",
    'const clock = Date',
    'const text = `${Date}`',
    'function clock() { return Date; }',
  ])('flags %s', (text) => {
    expect(purityFaults(at('src/lib/core/plan/a.ts', text))).toHaveLength(1);
    expect(purityFaults(at('src/lib/session/a.ts', text))).toEqual([]);
  });

  test.each([
    '// Date.now()',
    'plan.process',
    'const row = { process: 1 }',
    'const process = 1',
    "const a = 'console.log'",
  ])('passes %s', (text) => {
    expect(purityFaults(at('src/lib/core/plan/a.ts', text))).toEqual([]);
  });
});

test('the timer check flags a timer outside session', () => {
  const text = 'setTimeout(stop, 1000)';
  expect(timerFaults(at('src/lib/ui/a.ts', text))).toHaveLength(1);
  expect(timerFaults(at('src/lib/ui/A.svelte', `<script>${text}</script>`))).toHaveLength(1);
  expect(timerFaults(at('src/lib/session/a.ts', text))).toEqual([]);
});

test('the length check flags line 401, except in tables of facts', () => {
  expect(lengthFaults(at('src/lib/ui/a.ts', 'a\n'.repeat(400)))).toEqual([]);
  expect(lengthFaults(at('src/lib/ui/a.ts', 'a\n'.repeat(401)))).toHaveLength(1);
  expect(lengthFaults(at('src/lib/core/facts/a.ts', 'a\n'.repeat(401)))).toEqual([]);
});

test('the address check flags a string, markup and a style, and passes a comment', () => {
  const address = 'https://example.org/x';
  expect(addressFaults(at('src/lib/ui/a.ts', `const a = '${address}';`))).toHaveLength(1);
  expect(addressFaults(at('src/lib/ui/a.ts', `const a = \`${address}/\${b}\`;`))).toHaveLength(1);
  expect(addressFaults(at('src/lib/ui/A.svelte', `<a href="${address}">x</a>`))).toHaveLength(1);
  expect(addressFaults(at('src/lib/ui/a.css', `a { background: url(${address}) }`))).toHaveLength(1);
  expect(addressFaults(at('src/lib/core/field/a.ts', `// ${address}`))).toEqual([]);
  expect(addressFaults(at('src/lib/core/facts/a.ts', `const a = '${address}';`))).toEqual([]);
  expect(addressFaults(at('src/lib/ui/A.svelte', '<svg xmlns="http://www.w3.org/2000/svg" />'))).toEqual([]);
});
