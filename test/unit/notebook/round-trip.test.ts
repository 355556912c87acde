import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { openNotebook } from '$lib/notebook/store.ts';
import type { Everything } from '$lib/notebook/store.ts';
import { aBath, aJob, running, somePreferences } from './records-for-test.ts';

vi.stubGlobal('__APP_VERSION__', '0.1.0');

/** A fresh browser with its own storage and its own page. */
async function browser() {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.resetModules();
  return {
    jobs: await import('$lib/session/jobs.ts'),
    files: await import('$lib/session/notebook-file.ts'),
    book: await openNotebook(),
  };
}

const odd = { id: 'odd', version: 9 };
const all: Everything = {
  jobs: [aJob('a'), aJob('b'), odd],
  baths: [aBath('x')],
  preferences: somePreferences,
};

beforeEach(() => {
  vi.restoreAllMocks();
});

describe('one file moves the notebook', () => {
  test('to another browser, record by record, and a second time adds nothing', async () => {
    const here = await browser();
    await here.book.saveAll(all);
    const saved = await here.files.wholeNotebook(new Date(2026, 10, 25));
    expect(saved.name).toBe('etchwright-notebook-2026-11-25.json');

    const there = await browser();
    for (const round of [1, 2]) {
      const run = await there.files.tryFile(new File([saved.text], saved.name));
      if (there.files.isBadFile(run)) throw new Error(run.found);
      expect(run.jobs.fresh).toHaveLength(round === 1 ? 2 : 0);
      await there.files.takeFile(run, { jobs: 'mine', baths: 'mine', preferences: 'mine' });
      expect(await there.book.everything()).toEqual(all);
    }
  });
  test('and a full storage is said, nothing changed', async () => {
    const { files } = await browser();
    expect(files.storageTrouble(new DOMException('', 'QuotaExceededError'))).toMatch(
      /full.*Nothing was changed/,
    );
    expect(files.storageTrouble(new Error('no'))).toContain('(no)');
  });
  test('a write that meets a full storage leaves the notebook as it was', async () => {
    const { files, book } = await browser();
    await book.saveJob(aJob('a'), 'strict');
    const text = JSON.stringify({
      etchwrightNotebook: 1,
      appVersion: '1',
      savedAt: 1,
      jobs: [aJob('b'), aJob('c')],
      baths: [],
    });
    const run = await files.tryFile(new File([text], 'n.json'));
    if (files.isBadFile(run)) throw new Error(run.found);
    const store = Object.getPrototypeOf(IDBObjectStore.prototype) === null ? null : IDBObjectStore.prototype;
    vi.spyOn(store as IDBObjectStore, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    const failed: unknown = await files
      .takeFile(run, { jobs: 'mine', baths: 'mine', preferences: 'mine' })
      .catch((error: unknown) => error);
    expect(files.storageTrouble(failed)).toMatch(/full/);
    vi.restoreAllMocks();
    expect((await book.everything()).jobs).toEqual([aJob('a')]);
  });
});

describe('the list of jobs', () => {
  test('stands with what may be powered first, then the latest, and shows what cannot be read', async () => {
    const { jobs, book } = await browser();
    await book.saveAll({
      ...all,
      jobs: [
        aJob('old', { updatedAt: 1 }),
        aJob('new', { updatedAt: 3, snapshot: { value: { neutralise: 'hold' } } }),
        aJob('live', { updatedAt: 2, snapshot: running }),
        odd,
      ],
    });
    const here = await jobs.jobsHere();
    expect(here.jobs.map(({ id, step, powered }) => [id, step, powered])).toEqual([
      ['live', 'etch', true],
      ['new', 'neutralise', false],
      ['old', 'metal', false],
    ]);
    expect(here.unreadable).toHaveLength(1);
  });
  test('deletes with a way back, and never a running job or an unreadable record', async () => {
    const { jobs, book } = await browser();
    await book.saveAll({ ...all, jobs: [aJob('a'), aJob('live', { snapshot: running }), odd] });
    const undo = await jobs.deleteJob('a');
    expect(await book.job('a')).toBeNull();
    await undo?.();
    expect(await book.job('a')).toEqual(aJob('a'));
    expect(await jobs.deleteJob('live')).toBeNull();
    expect(await jobs.deleteJob('odd')).toBeNull();
    expect((await book.everything()).jobs).toHaveLength(3);
  });
});
