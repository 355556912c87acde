import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { connectNotebook } from '$lib/notebook/store.ts';
import type { Notebook } from '$lib/notebook/store.ts';
import { everythingIn } from './in-memory.ts';
import { aBath, aJob, somePreferences } from './records-for-test.ts';

let book: Notebook;

beforeEach(async () => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  book = await connectNotebook();
});

/** Puts a value past the schema, as an older or newer app may have left it. */
async function putRaw(value: unknown): Promise<void> {
  const db = await openDB('etchwright');
  await db.put('jobs', value);
  db.close();
}

describe('the notebook', () => {
  test('gives back what was kept', async () => {
    await book.saveJob(aJob('a'), 'strict');
    await book.saveBath(aBath('b'));
    expect(await book.job('a')).toEqual(aJob('a'));
    expect((await book.baths()).records).toEqual([aBath('b')]);
    expect(await book.job('none')).toBeNull();
  });
  test('keeps what it cannot read, says why, and reads the rest', async () => {
    const odd = { id: 'odd', version: 7, draft: 'from later' };
    await putRaw(odd);
    await book.saveJob(aJob('a'), 'relaxed');
    const { records, unreadable } = await book.jobs();
    expect(records.map(({ id }) => id)).toEqual(['a']);
    expect(unreadable).toEqual([{ id: 'odd', raw: odd, why: expect.stringMatching(/^version: /) as string }]);
    expect((await everythingIn(book)).jobs).toContainEqual(odd);
  });
  test('writes all or nothing', async () => {
    await book.saveJob(aJob('a'), 'strict');
    const noKey = { version: 1 };
    await expect(
      book.saveAll({ jobs: [aJob('b'), noKey], baths: [aBath('c')], preferences: somePreferences }),
    ).rejects.toThrow();
    expect(await everythingIn(book)).toEqual({
      ...{ jobs: [aJob('a')], baths: [], preferences: undefined },
      photos: [],
    });
  });
  test('leaves preferences alone when there are none to write', async () => {
    await book.saveMeta('preferences', somePreferences);
    await book.saveAll({ jobs: [], baths: [], preferences: undefined });
    expect((await everythingIn(book)).preferences).toEqual(somePreferences);
  });
  test('deletes one job only', async () => {
    await book.saveAll({ jobs: [aJob('a'), aJob('b')], baths: [], preferences: undefined });
    await book.deleteJob('a');
    expect((await book.jobs()).records.map(({ id }) => id)).toEqual(['b']);
  });
});

describe('what is derived from jobs', () => {
  let made: string[] = [];
  const titles = async (by = '1'): Promise<readonly string[]> => {
    made = [];
    const facts = await book.derived(
      'line',
      (raw) => {
        const { id, draft } = raw as { id: string; draft: { title: string } };
        made.push(id);
        return draft.title;
      },
      by,
    );
    return [...facts.values()].toSorted();
  };
  const titled = (id: string, title: string) => aJob(id, { draft: { title } });

  test('is made once, and again only for a job that has changed', async () => {
    await book.saveJob(titled('a', 'A'), 'relaxed');
    await book.saveJob(titled('b', 'B'), 'relaxed');
    expect(await titles()).toEqual(['A', 'B']);
    expect(made).toEqual(['a', 'b']);
    expect(await titles()).toEqual(['A', 'B']);
    expect(made).toEqual([]);
    await book.saveJob(titled('b', 'C'), 'relaxed');
    expect(await titles()).toEqual(['A', 'C']);
    expect(made).toEqual(['b']);
  });
  test('goes with a deleted job, and does not come back with another of its name', async () => {
    await book.saveJob(titled('a', 'A'), 'relaxed');
    await titles();
    await book.deleteJob('a');
    await book.saveAll({ jobs: [titled('a', 'Another')], baths: [], preferences: undefined });
    expect(await titles()).toEqual(['Another']);
    await book.deleteJob('a');
    expect(await titles()).toEqual([]);
  });
  test('is made anew by another version of the app', async () => {
    await book.saveJob(titled('a', 'A'), 'relaxed');
    await titles();
    await titles('2');
    expect(made).toEqual(['a']);
  });
  test('is not put down over what another page has put down meanwhile', async () => {
    const many = Array.from({ length: 1500 }, (_, n) => titled(`job ${String(n)}`, 'same'));
    await book.saveAll({ jobs: [titled('a', 'A'), ...many], baths: [], preferences: undefined });
    await titles();
    // a page of another version makes everything anew; while it is at that, C is written, and a page reads it
    const others: Promise<unknown>[] = [];
    await book.derived(
      'line',
      (raw) => {
        if (others.length === 0) {
          others.push(book.saveJob(titled('a', 'C'), 'relaxed').then(() => titles()));
        }
        return (raw as { draft: { title: string } }).draft.title;
      },
      '2',
    );
    await Promise.all(others);
    expect(await titles('2')).toContain('C');
  });
});
