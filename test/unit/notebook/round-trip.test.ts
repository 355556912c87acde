import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { connectNotebook } from '$lib/notebook/store.ts';
import { sha256Of } from '$lib/notebook/sha256.ts';
import { idsIn, TAKEN_IN } from '$lib/notebook/store.ts';
import type { Everything } from '$lib/notebook/store.ts';
import { everythingIn, picture, wholeFile } from './in-memory.ts';
import { aBath, aJob, running, somePreferences } from './records-for-test.ts';

vi.stubGlobal('__APP_VERSION__', '0.1.0');

/** A fresh browser with its own storage and its own page. */
async function browser() {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.resetModules();
  return {
    jobs: await import('$lib/session/jobs.ts'),
    files: await import('$lib/session/notebook-file.ts'),
    book: await connectNotebook(),
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

const bytes = picture(7, 8, 9);
const photo = { id: await sha256Of(bytes), bytes };
const lost = { id: await sha256Of(picture(1)), bytes: picture(1) };
const shown = [{ id: photo.id, shows: 'masked', at: 1 }];
const keepMine = { jobs: 'mine', baths: 'mine', preferences: 'mine' } as const;

describe('one file moves the notebook', () => {
  test('to another browser, record by record and picture by picture; a second time adds nothing', async () => {
    const here = await browser();
    const whole = { ...all, jobs: [aJob('a', { photos: shown }), aJob('b')] };
    await here.book.saveAll(whole);
    await here.book.savePhoto(photo);
    await here.book.savePhoto(lost);
    const saved = await here.files.wholeNotebook(new Date(2026, 10, 25));
    expect(saved).toMatchObject({ name: 'etchwright-notebook-2026-11-25.txt', jobs: 2, baths: 1 });

    const there = await browser();
    for (const round of [1, 2]) {
      const file = new File([saved.content], saved.name);
      const run = await there.files.tryFile(file);
      if (there.files.isBadFile(run)) throw new Error(run.found);
      expect(run.jobs.fresh).toHaveLength(round === 1 ? 2 : 0);
      expect([run.photos.fresh.size, run.photos.same]).toEqual(round === 1 ? [1, 0] : [0, 1]);
      expect(await there.files.takeFile(run, keepMine, file)).toBeNull();
      expect(await everythingIn(there.book)).toEqual({ ...whole, photos: [photo.id] });
      expect(await there.book.photo(photo.id)).toEqual(photo);
      expect(idsIn(await there.book.meta(TAKEN_IN))).toEqual(['a', 'b']);
    }
  });
  test('of the first version is read still', async () => {
    const { files, book } = await browser();
    const file = new File([wholeFile(all)], 'n.json');
    const run = await files.tryFile(file);
    if (files.isBadFile(run)) throw new Error(run.found);
    await files.takeFile(run, keepMine, file);
    expect(await everythingIn(book)).toEqual({ ...all, photos: [] });
  });
  test('a picture that finds no room loses no text, and comes with the next taking in', async () => {
    const here = await browser();
    await here.book.saveAll({ ...all, jobs: [aJob('a', { photos: shown })] });
    await here.book.savePhoto(photo);
    const saved = await here.files.wholeNotebook();

    const { files, book } = await browser();
    const file = new File([saved.content], saved.name);
    const run = await files.tryFile(file);
    if (files.isBadFile(run)) throw new Error(run.found);
    const put = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'put')?.value as (
      this: IDBObjectStore,
      ...args: Parameters<IDBObjectStore['put']>
    ) => IDBRequest<IDBValidKey>;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (this.name === 'photos') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, args);
    });
    expect(await files.takeFile(run, keepMine, file)).toMatch(/except 1 picture \(QuotaExceededError\)/);
    expect((await everythingIn(book)).jobs).toEqual([aJob('a', { photos: shown })]);
    vi.restoreAllMocks();
    const again = await files.tryFile(file);
    if (files.isBadFile(again)) throw new Error(again.found);
    expect([again.jobs.fresh.length, again.photos.fresh.size]).toEqual([0, 1]);
    expect(await files.takeFile(again, keepMine, file)).toBeNull();
    expect(await book.photo(photo.id)).toEqual(photo);
  });
  test('what no text is, is said', async () => {
    const { files } = await browser();
    expect(await files.tryFile(new File([Uint8Array.from([0xff, 0xfe, 0xfa])], 'n.txt'))).toMatchObject({
      found: 'no text',
    });
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
    const file = new File([text], 'n.json');
    const run = await files.tryFile(file);
    if (files.isBadFile(run)) throw new Error(run.found);
    const store = Object.getPrototypeOf(IDBObjectStore.prototype) === null ? null : IDBObjectStore.prototype;
    vi.spyOn(store as IDBObjectStore, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    const failed: unknown = await files.takeFile(run, keepMine, file).catch((error: unknown) => error);
    expect(files.storageTrouble(failed)).toMatch(/full/);
    vi.restoreAllMocks();
    expect((await everythingIn(book)).jobs).toEqual([aJob('a')]);
  });
});

test('pictures of deleted jobs are dropped; those that a job shows stay', async () => {
  const { jobs, book } = await browser();
  await book.saveAll({ ...all, jobs: [aJob('a', { photos: shown }), odd] });
  await book.savePhoto(photo);
  await book.savePhoto(lost);
  // one that cannot be read may show any of them
  await jobs.dropLostPhotos();
  expect((await book.photoIds()).toSorted()).toEqual([photo.id, lost.id].toSorted());
  const file = await (await import('$lib/session/notebook-file.ts')).wholeNotebook();
  expect(await file.content.text()).toContain(lost.id);
  await book.deleteJob('odd');
  await jobs.dropLostPhotos();
  expect(await book.photoIds()).toEqual([photo.id]);
  await jobs.deleteJob('a');
  await jobs.dropLostPhotos();
  expect(await book.photoIds()).toEqual([]);
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
  test('follows every change, though its lines are kept beside the jobs', async () => {
    const { jobs, book } = await browser();
    await book.saveJob(aJob('a'), 'strict');
    const titles = async () => (await jobs.jobsHere()).jobs.map(({ title }) => title);
    expect(await titles()).toEqual(['Job a']);
    await book.saveJob(aJob('a', { draft: { title: 'Cuff' } }), 'relaxed');
    expect(await titles()).toEqual(['Cuff']);
    await book.saveAll({ ...all, jobs: [aJob('a', { draft: { title: 'Token' } })] });
    expect(await titles()).toEqual(['Token']);
    await book.deleteJob('a');
    expect(await titles()).toEqual([]);
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
    expect((await everythingIn(book)).jobs).toHaveLength(3);
  });
});
