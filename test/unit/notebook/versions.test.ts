import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { expect, test, vi } from 'vitest';
import { sequences } from '$lib/notebook/migrations.ts';
import { preferences } from '$lib/notebook/records.ts';
import { isUnreadable, connectNotebook, readBath, readJob, readRecord } from '$lib/notebook/store.ts';
import { recordVersions } from '../../fixtures/record-versions.ts';
import { everythingIn } from './in-memory.ts';

vi.stubGlobal('__APP_VERSION__', '0.1.0');

const readers: Readonly<Record<string, (raw: unknown) => object>> = {
  job: readJob,
  bath: readBath,
  preferences: (raw) => readRecord(preferences, raw, sequences.preferences),
};
const cases = Object.entries(recordVersions).flatMap(([kind, all]) =>
  all.map((record) => [kind, record.version, record] as const),
);

test('each version of each kind has a record here, as it was written', () => {
  for (const { kind, latest } of Object.values(sequences)) {
    expect(
      recordVersions[kind]?.map(({ version }) => version),
      kind,
    ).toEqual(Array.from({ length: latest }, (_, n) => n + 1));
  }
});

test.each(cases)('a %s of version %i opens, and nothing it says is lost', (kind, _version, record) => {
  const read = readers[kind]?.(record) ?? {};
  expect(isUnreadable(read)).toBe(false);
  if (kind === 'job') expect(read).toEqual({ ...record, version: sequences.job.latest });
});

test.each(cases)('a %s of a later version than %i is shown as it is', (kind, _version, record) => {
  const later = { ...record, version: 99 };
  const read = readers[kind]?.(later) ?? {};
  expect(read).toMatchObject({ raw: later, why: expect.stringMatching(/^version: /) as string });
});

test('a store of the first version opens: every record, the list, and its file', async () => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.resetModules();
  const [job, later] = [recordVersions['job']?.[0], { id: 'later', version: 99, more: [1] }];
  const old = await openDB('etchwright', 1, {
    upgrade(db) {
      db.createObjectStore('jobs', { keyPath: 'id' });
      db.createObjectStore('baths', { keyPath: 'id' });
      db.createObjectStore('meta');
    },
  });
  await old.put('jobs', job);
  await old.put('jobs', later);
  for (const bath of recordVersions['bath'] ?? []) await old.put('baths', bath);
  await old.put('meta', recordVersions['preferences']?.[0], 'preferences');
  old.close();

  const book = await connectNotebook();
  expect((await book.jobs()).records).toEqual([{ ...job, version: sequences.job.latest }]);
  expect((await book.baths()).records).toHaveLength(2);
  const { jobsHere } = await import('$lib/session/jobs.ts');
  const here = await jobsHere();
  expect(here.jobs.map(({ title, step }) => [title, step])).toEqual([['Fern', 'resist']]);
  expect(here.unreadable.map(({ id }) => id)).toEqual(['later']);

  const { wholeNotebook, tryFile, takeFile, isBadFile } = await import('$lib/session/notebook-file.ts');
  const saved = await wholeNotebook();
  const file = new File([saved.content], saved.name);
  const run = await tryFile(file);
  if (isBadFile(run)) throw new Error(run.found);
  const before = await everythingIn(book);
  await takeFile(run, { jobs: 'theirs', baths: 'theirs', preferences: 'theirs' }, file);
  // what cannot be read is exported, and never written over
  expect(await everythingIn(book)).toEqual(before);
  expect(before.jobs).toContainEqual(later);
});
