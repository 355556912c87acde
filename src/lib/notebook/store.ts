import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import * as v from 'valibot';
import { migrate, sequences } from './migrations.ts';
import type { Sequence } from './migrations.ts';
import { bathRecord, jobRecord } from './records.ts';
import type { BathRecord, JobRecord, UnreadableRecord } from './records.ts';

interface Shape extends DBSchema {
  jobs: { key: string; value: unknown };
  baths: { key: string; value: unknown };
  meta: { key: string; value: unknown };
}

/** `relaxed` for typing; `strict` waits for the disk: start, stop, hold answers, import. */
export type Durability = 'relaxed' | 'strict';

export interface Kept<T> {
  readonly records: readonly T[];
  readonly unreadable: readonly UnreadableRecord[];
}

/** The notebook as stored, record by record. */
export interface Everything {
  readonly jobs: readonly unknown[];
  readonly baths: readonly unknown[];
  readonly preferences: unknown;
}

/** The notebook of this browser. A write resolves once the transaction has completed, never before. */
export interface Notebook {
  jobs(): Promise<Kept<JobRecord>>;
  job(id: string): Promise<JobRecord | UnreadableRecord | null>;
  saveJob(record: JobRecord, durability: Durability): Promise<void>;
  deleteJob(id: string): Promise<void>;
  baths(): Promise<Kept<BathRecord>>;
  saveBath(record: BathRecord): Promise<void>;
  meta(key: string): Promise<unknown>;
  saveMeta(key: string, value: unknown): Promise<void>;
  /** everything as stored, for export: what cannot be read included */
  everything(): Promise<Everything>;
  /** writes all or nothing; preferences only when there are any */
  saveAll(all: Everything): Promise<void>;
  close(): void;
}

/** Where what is asked once and kept is found among the meta values. */
export const PREFERENCES = 'preferences';

export const idOf = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'id' in raw && typeof raw.id === 'string' ? raw.id : '';

/** Reads one stored value by its schema, raised to today's version; what does not fit is handed back whole. */
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
  openDB<Shape>('etchwright', 1, {
    upgrade(db) {
      db.createObjectStore('jobs', { keyPath: 'id' });
      db.createObjectStore('baths', { keyPath: 'id' });
      db.createObjectStore('meta');
    },
    // a newer version waits in another tab: let go, this page asks to be loaded again
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      onStale();
    },
  });

/** @throws DOMException when the browser gives no storage, as in some private windows */
export async function openNotebook(onStale: () => void = () => undefined): Promise<Notebook> {
  const db = await connect(onStale);
  const put = async (store: 'jobs' | 'baths', record: object, durability: Durability): Promise<void> => {
    const transaction = db.transaction(store, 'readwrite', { durability });
    await transaction.store.put(record);
    await transaction.done;
  };
  return {
    jobs: async () => sorted((await db.getAll('jobs')).map(readJob)),
    job: async (id) => {
      const raw = await db.get('jobs', id);
      return raw === undefined ? null : readJob(raw);
    },
    saveJob: (record, durability) => put('jobs', record, durability),
    deleteJob: (id) => db.delete('jobs', id),
    baths: async () => sorted((await db.getAll('baths')).map(readBath)),
    saveBath: (record) => put('baths', record, 'strict'),
    meta: (key) => db.get('meta', key),
    saveMeta: async (key, value) => {
      await db.put('meta', value, key);
    },
    everything: async () => ({
      jobs: await db.getAll('jobs'),
      baths: await db.getAll('baths'),
      preferences: await db.get('meta', PREFERENCES),
    }),
    saveAll: async ({ jobs, baths, preferences }) => {
      const transaction = db.transaction(['jobs', 'baths', 'meta'], 'readwrite', { durability: 'strict' });
      try {
        for (const job of jobs) await transaction.objectStore('jobs').put(job);
        for (const bath of baths) await transaction.objectStore('baths').put(bath);
        if (preferences !== undefined) await transaction.objectStore('meta').put(preferences, PREFERENCES);
        await transaction.done;
      } catch (error) {
        // a value that cannot be stored is refused at once, and what came before it would go through
        transaction.done.catch(() => undefined);
        if (transaction.error === null) transaction.abort();
        throw error;
      }
    },
    close: () => {
      db.close();
    },
  };
}
