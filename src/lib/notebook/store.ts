import { openDB } from 'idb';
import type { IDBPDatabase } from 'idb';
import * as v from 'valibot';
import { boxed, isBoxed, textOf, unboxed } from './boxed.ts';
import { derivedFrom, marksFor } from './derived.ts';
import type { DerivedKind, DerivedShape } from './derived.ts';
import { migrate, sequences } from './migrations.ts';
import type { Sequence } from './migrations.ts';
import type { StoredPhoto } from './photo-store.ts';
import { bathRecord, jobRecord } from './records.ts';
import type { BathRecord, JobRecord, UnreadableRecord } from './records.ts';

interface Shape extends DerivedShape {
  baths: { key: string; value: unknown };
  meta: { key: string; value: unknown };
  photos: { key: string; value: StoredPhoto };
}

/**
 * `strict` waits for the disk: used for start, stop, answers of a hold, and loading a file. `relaxed` is for
 * typing.
 */
export type Durability = 'relaxed' | 'strict';

export interface Kept<T> {
  readonly records: readonly T[];
  readonly unreadable: readonly UnreadableRecord[];
}

/** Records to write together. Jobs may be objects or in their stored form. */
export interface Everything {
  readonly jobs: readonly unknown[];
  readonly baths: readonly unknown[];
  readonly preferences: unknown;
  /** ids of jobs that come from a file: whatever was checked there must be checked again here */
  readonly takenIn?: readonly string[];
}

/** The notebook in this browser. A write resolves only when its transaction has completed. */
export interface Notebook {
  jobs(): Promise<Kept<JobRecord>>;
  job(id: string): Promise<JobRecord | UnreadableRecord | null>;
  saveJob(record: JobRecord, durability: Durability): Promise<void>;
  deleteJob(id: string): Promise<void>;
  baths(): Promise<Kept<BathRecord>>;
  saveBath(record: BathRecord): Promise<void>;
  meta(key: string): Promise<unknown>;
  saveMeta(key: string, value: unknown): Promise<void>;
  /** one short fact for each job, by its id, read from the stored facts where they are still true */
  derived<T>(kind: DerivedKind, make: (raw: unknown) => T, by: string): Promise<ReadonlyMap<string, T>>;
  /** JSON of every record, also of those that cannot be read; read a few at a time */
  texts(of: 'jobs' | 'baths'): AsyncGenerator<string, void>;
  ids(of: 'jobs' | 'baths'): Promise<readonly string[]>;
  /** one record as stored, readable or not */
  raw(of: 'jobs' | 'baths', id: string): Promise<unknown>;
  /** writes all records or none; preferences only if given */
  saveAll(all: Everything): Promise<void>;
  /** call this only after the procedure was told, and that is on the disk */
  forgetTakenIn(id: string): Promise<void>;
  photo(id: string): Promise<StoredPhoto | null>;
  /** has a transaction of its own, so that a picture that fails cannot stop a job from being saved */
  savePhoto(photo: StoredPhoto): Promise<void>;
  deletePhoto(id: string): Promise<void>;
  photoIds(): Promise<readonly string[]>;
  close(): void;
}

/** Key of the preferences among the meta values. */
export const PREFERENCES = 'preferences';
/** Key of the ids of jobs that came from a file and have not been opened yet. */
export const TAKEN_IN = 'taken-in';

export const idsIn = (stored: unknown): readonly string[] =>
  Array.isArray(stored) ? stored.filter((id) => typeof id === 'string') : [];

export const idOf = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'id' in raw && typeof raw.id === 'string' ? raw.id : '';

/**
 * Migrates one stored value and checks it by its schema. A value that does not fit is returned unchanged,
 * with the reason.
 */
export function readRecord<S extends v.GenericSchema>(
  schema: S,
  raw: unknown,
  sequence: Sequence,
): v.InferOutput<S> | UnreadableRecord {
  const result = v.safeParse(schema, migrate(raw, sequence));
  if (result.success) return result.output;
  const [issue] = result.issues;
  return { id: idOf(raw), raw, why: `${v.getDotPath(issue) ?? 'record'}: ${issue.message}` };
}

export const readJob = (raw: unknown): JobRecord | UnreadableRecord =>
  readRecord(jobRecord, raw, sequences.job);

export const readBath = (raw: unknown): BathRecord | UnreadableRecord =>
  readRecord(bathRecord, raw, sequences.bath);

export const isUnreadable = (record: object): record is UnreadableRecord =>
  'why' in record && 'raw' in record;

function sorted<T extends object>(read: readonly (T | UnreadableRecord)[]): Kept<T> {
  return {
    records: read.filter((record): record is T => !isUnreadable(record)),
    unreadable: read.filter(isUnreadable),
  };
}

const connect = (onStale: () => void): Promise<IDBPDatabase<Shape>> =>
  openDB<Shape>('etchwright', 2, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('jobs', { keyPath: 'id' });
        db.createObjectStore('baths', { keyPath: 'id' });
        db.createObjectStore('meta');
      }
      db.createObjectStore('photos', { keyPath: 'id' });
      db.createObjectStore('derived');
    },
    // another tab waits with a newer version: close, and let this page ask to be reloaded
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      onStale();
    },
  });

/** Number of records read at once: a whole notebook would be too much for a phone's memory. */
const BATCH = 100;

async function* batches(db: IDBPDatabase<Shape>, of: 'jobs' | 'baths'): AsyncGenerator<string, void> {
  const read = async (after: IDBKeyRange | null) => {
    const keys = await db.getAllKeys(of, after, BATCH);
    const last = keys.at(-1);
    return last === undefined
      ? null
      : { last, stored: await db.getAll(of, IDBKeyRange.bound(keys[0], last)) };
  };
  let next = read(null);
  for (;;) {
    const batch = await next;
    if (batch === null) return;
    // read the next records while these are processed
    next = read(IDBKeyRange.lowerBound(batch.last, true));
    next.catch(() => undefined);
    yield* batch.stored.map(textOf);
  }
}

/** Silences one request of a transaction: when the transaction fails, its own error is enough. */
const quiet = <T>(request: Promise<T>): Promise<T> => {
  request.catch(() => undefined);
  return request;
};

/** @throws DOMException when the browser offers no storage, as in some private windows */
export async function connectNotebook(onStale: () => void = () => undefined): Promise<Notebook> {
  const db = await connect(onStale);
  /** marks that the facts derived from a job are out of date */
  const mark = (
    store: { put: (value: number, key: [string, string]) => Promise<unknown> },
    id: string,
  ): Promise<unknown> => Promise.all(marksFor(id).map(({ key, value }) => store.put(value, key)));
  return {
    jobs: async () => sorted((await db.getAll('jobs')).map((stored) => readJob(unboxed(stored)))),
    job: async (id) => {
      const stored = await db.get('jobs', id);
      return stored === undefined ? null : readJob(unboxed(stored));
    },
    saveJob: async (record, durability) => {
      const transaction = db.transaction(['jobs', 'derived'], 'readwrite', { durability });
      await Promise.all([
        transaction.objectStore('jobs').put(boxed(record)),
        mark(transaction.objectStore('derived'), record.id),
        transaction.done,
      ]);
    },
    deleteJob: async (id) => {
      const transaction = db.transaction(['jobs', 'derived'], 'readwrite');
      await Promise.all([
        transaction.objectStore('jobs').delete(id),
        mark(transaction.objectStore('derived'), id),
        transaction.done,
      ]);
    },
    baths: async () => sorted((await db.getAll('baths')).map(readBath)),
    saveBath: async (record) => {
      const transaction = db.transaction('baths', 'readwrite', { durability: 'strict' });
      await Promise.all([transaction.store.put(record), transaction.done]);
    },
    meta: (key) => db.get('meta', key),
    saveMeta: async (key, value) => {
      await db.put('meta', value, key);
    },
    derived: (kind, make, by) =>
      derivedFrom(db as unknown as IDBPDatabase<DerivedShape>, kind, (stored) => make(unboxed(stored)), by),
    texts: (of) => batches(db, of),
    ids: (of) => db.getAllKeys(of),
    raw: async (of, id) => unboxed(await db.get(of, id)),
    saveAll: async ({ jobs, baths, preferences, takenIn }) => {
      const transaction = db.transaction(['jobs', 'baths', 'meta', 'derived'], 'readwrite', {
        durability: 'strict',
      });
      try {
        const [jobStore, derived] = [transaction.objectStore('jobs'), transaction.objectStore('derived')];
        const known = new Set(await jobStore.getAllKeys());
        await Promise.all([
          ...jobs.flatMap((job) => {
            const id = idOf(job);
            if (id === '') throw new TypeError('a job without an id');
            const put = quiet(jobStore.put(isBoxed(job) ? job : boxed(job as { id: string })));
            return known.has(id) ? [put, quiet(mark(derived, id))] : [put];
          }),
          ...baths.map((bath) => quiet(transaction.objectStore('baths').put(bath))),
        ]);
        const meta = transaction.objectStore('meta');
        if (preferences !== undefined) await meta.put(preferences, PREFERENCES);
        if (takenIn) {
          const before = idsIn(await meta.get(TAKEN_IN));
          await meta.put([...new Set([...before, ...takenIn])], TAKEN_IN);
        }
        await transaction.done;
      } catch (error) {
        // a value that cannot be stored throws at once; without an abort the records before it would be
        // written
        transaction.done.catch(() => undefined);
        if (transaction.error === null) transaction.abort();
        throw error;
      }
    },
    forgetTakenIn: async (id) => {
      const transaction = db.transaction('meta', 'readwrite');
      const before = idsIn(await transaction.store.get(TAKEN_IN));
      if (before.includes(id)) {
        await transaction.store.put(
          before.filter((other) => other !== id),
          TAKEN_IN,
        );
      }
      await transaction.done;
    },
    photo: async (id) => (await db.get('photos', id)) ?? null,
    savePhoto: async (photo) => {
      await db.put('photos', photo);
    },
    deletePhoto: (id) => db.delete('photos', id),
    photoIds: () => db.getAllKeys('photos'),
    close: () => {
      db.close();
    },
  };
}
