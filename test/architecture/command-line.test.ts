import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { referencesOf, targetOf } from './rooms.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');
const { dependencies, devDependencies } = JSON.parse(textOf('package.json')) as Record<
  'dependencies' | 'devDependencies',
  Record<string, string>
>;

/** What a file needs when it runs: types are gone by then. */
const needsOf = (path: string): string[] =>
  referencesOf({ path, text: textOf(path) })
    .filter(({ specifier, typeOnly }) => !typeOnly && specifier !== '' && !specifier.startsWith('node:'))
    .map(({ specifier }) => specifier);

/** Every file that the command line reads, with the packages each of them names. */
function reached(): Map<string, string[]> {
  const packages = new Map<string, string[]>();
  const waiting = ['src/cli/run.mjs', 'src/cli/main.ts'];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (packages.has(path)) continue;
    const from = path;
    const named: string[] = [];
    for (const specifier of needsOf(from)) {
      const target = targetOf(from, specifier);
      if (target === undefined) named.push(specifier);
      else if (target.startsWith('src/')) waiting.push(target);
    }
    packages.set(from, named);
  }
  return packages;
}

const nameOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

const files = reached();

test('the command line needs no package that only developers have', () => {
  expect([...files.keys()]).toContain('src/lib/print/make-papers.ts');
  const used = new Set([...files.values()].flat().map(nameOf));
  expect([...used]).toEqual(expect.arrayContaining(['rolldown', 'valibot', 'pdfmake']));
  expect([...used].filter((name) => dependencies[name] === undefined)).toEqual([]);
});

test('nor does it look one up by name', () => {
  const names = Object.keys(devDependencies).join('|');
  const quoted = new RegExp(`['"\`](?:${names})(?:/[^'"\`]*)?['"\`]`, 'g');
  expect([...files.keys()].flatMap((path) => textOf(path).match(quoted) ?? [])).toEqual([]);
});
