import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { looseTables, shownFallbacks, textFallbacks } from './words.ts';

const root = fileURLToPath(new URL('../../src', import.meta.url));
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map((path) => path.split(sep).join('/'))
  .filter((path) => /\.(ts|svelte)$/.test(path))
  .map((path) => ({ path, script: readFileSync(join(root, path), 'utf8') }));
const texts = files.filter(({ path }) => path.startsWith('lib/words/en/'));
const others = files.filter(({ path }) => !path.startsWith('lib/words/'));

/** Fallbacks behind which no text is missing, and why. */
const allowed: Readonly<Record<string, string>> = {
  "lib/print/wear-page.ts: otherNames[id] ?? ''": 'few things have a second name',
  "lib/session/jobs-from-plan.ts: depthPurposes.find((known) => known.mm === mm)?.id ?? 'number'":
    'an answer’s id and no text: a depth of no purpose is the maker’s own',
  "lib/ui/job/metal/WhichMetal.svelte: bitableStock.find((stock) => stock.id === id)?.stamp ?? ''":
    'few metals bear a stamp',
  "lib/words/en/paths.ts: after ?? 'not there'": 'nothing stands there now, and the text says so',
  "lib/words/en/paths.ts: before ?? 'not there'": 'nothing stood there before, and the text says so',
};

describe('texts', () => {
  test('are found', () => {
    expect(texts.length).toBeGreaterThan(60);
    expect(others.length).toBeGreaterThan(300);
  });
  test('stand under ids that the compiler knows', () => {
    expect(texts.flatMap(({ path, script }) => looseTables(path, script))).toEqual([]);
  });
  test('have no stand-in, so that a missing one is found', () => {
    const found = [
      ...texts.flatMap(({ path, script }) => textFallbacks(path, script)),
      ...others.flatMap(({ path, script }) => shownFallbacks(path, script)),
    ];
    expect(found.toSorted()).toEqual(Object.keys(allowed).toSorted());
  });
});

describe('the check of texts', () => {
  test.each([
    'const names: Record<string, string> = {};',
    'const names: Readonly<Partial<Record<string, string>>> = {};',
    'const names: Readonly<Record<Family, Readonly<Record<string, string>>>> = {};',
    'interface Texts { readonly options: Readonly<Record<string, string>> }',
    'const name = (names as Record<string, string>)[id];',
  ])('finds the loose table of %s', (script) => {
    expect(looseTables('a.ts', script)).toHaveLength(1);
  });
  test.each([
    'const names: Readonly<Record<Salt, string>> = {};',
    'const names = { a: { label: "A" } } as const satisfies Readonly<Record<string, Texts>>;',
    'const lines = (seen: Readonly<Record<string, string>>): string[] => [];',
    'const held: Readonly<Record<string, number>> = {};',
  ])('passes %s', (script) => {
    expect(looseTables('a.ts', script)).toEqual([]);
  });
  test.each(['names[id] ?? id', `names[id] ?? ''`, 'names[id] ?? `${id}`', 'found?.name ?? usual'])(
    'finds the stand-in of %s',
    (script) => {
      expect(textFallbacks('a.ts', script)).toHaveLength(1);
    },
  );
  test.each(['count ?? 0', 'names[id] ?? null', 'names[id] ?? undefined', 'uses.get(id) ?? new Map()'])(
    'passes %s',
    (script) => {
      expect(textFallbacks('a.ts', script)).toEqual([]);
    },
  );
  test('finds a stand-in for a text of another room, and passes what is no text', () => {
    const from = `import { names } from '$words/names.ts';`;
    expect(shownFallbacks('a.ts', `${from} const a = names[id] ?? '';`)).toHaveLength(1);
    expect(shownFallbacks('a.ts', `${from} const a = names[id]?.charAt(0) ?? id;`)).toHaveLength(1);
    expect(shownFallbacks('a.ts', `${from} const a = copies[id] ?? '0'; const b = hint ?? '';`)).toEqual([]);
    expect(shownFallbacks('A.svelte', `<script>${from}</script><p>{names[id] ?? ''}</p>`)).toHaveLength(1);
    expect(shownFallbacks('A.svelte', `<script>${from}</script><p>{copies[id] ?? ''}</p>`)).toEqual([]);
  });
});
