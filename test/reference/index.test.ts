import { expect, test } from 'vitest';
import { onlyCount, registeredChecks } from './check.ts';
import { published } from './publications.ts';

/** Every file of checks, imported only to count what it holds; each runs its checks in its own file. */
const files = import.meta.glob('./*.test.ts');
onlyCount();

const perFile = new Map<string, ReturnType<typeof registeredChecks>>();
for (const [path, load] of Object.entries(files)) {
  if (path.endsWith('/index.test.ts')) continue;
  const before = registeredChecks().length;
  await load();
  perFile.set(path, registeredChecks().slice(before));
}
const outside = registeredChecks().filter(({ source }) => published[source].how !== 'own');

test('at least 150 checks against outside sources', () => {
  expect(outside.length).toBeGreaterThanOrEqual(150);
});

test('at least 25 different publications', () => {
  expect(new Set(outside.map(({ source }) => source)).size).toBeGreaterThanOrEqual(25);
});

test('at least 40 equivalent weights of alloys', () => {
  expect(outside.filter(({ source }) => source === 'astmG102').length).toBeGreaterThanOrEqual(40);
});

test('every file holds checks of one source', () => {
  const sourcesOf = [...perFile].map(([path, checks]) => [path, new Set(checks.map((c) => c.source)).size]);
  expect(sourcesOf.filter(([, count]) => count !== 1)).toEqual([]);
});

test('one file per source, and no listed publication is unused', () => {
  const used = [...perFile.values()].map((checks) => checks[0]?.source);
  expect(used.toSorted()).toEqual(Object.keys(published).toSorted());
});

test('no two checks share a title', () => {
  const titles = registeredChecks().map(({ source, row }) => `${source} ${row}`);
  expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
});
