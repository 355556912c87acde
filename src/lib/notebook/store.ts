import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import * as v from 'valibot';
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
  everything(): Promise<{ jobs: readonly unknown[]; baths: readonly unknown[] }>;
  /** writes all or nothing */
  saveAll(jobs: readonly JobRecord[], baths: readonly BathRecord[]): Promise<void>;
  close(): void;
}

const idOf = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'id' in raw && typeof raw.id === 'string' ? raw.id : '';

/** Reads one stored value by its schema; what does not fit is handed back whole. */
export function readRecord<S extends v.GenericSchema>(
  schema: S,
  raw: unknown,
): v.InferOutput<S> | UnreadableRecord {
  const result = v.safeParse(schema, raw);
  if (result.success) return result.output;
  const [issue] = result.issues;
  return { id: idOf(raw), raw, why: `${v.getDotPath(issue) ?? 'record'}: ${issue.message}` };
}

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
    jobs: async () => sorted((await db.getAll('jobs')).map((raw) => readRecord(jobRecord, raw))),
    job: async (id) => {
      const raw = await db.get('jobs', id);
      return raw === undefined ? null : readRecord(jobRecord, raw);
    },
    saveJob: (record, durability) => put('jobs', record, durability),
    deleteJob: (id) => db.delete('jobs', id),
    baths: async () => sorted((await db.getAll('baths')).map((raw) => readRecord(bathRecord, raw))),
    saveBath: (record) => put('baths', record, 'strict'),
    meta: (key) => db.get('meta', key),
    saveMeta: async (key, value) => {
      await db.put('meta', value, key);
    },
    everything: async () => ({ jobs: await db.getAll('jobs'), baths: await db.getAll('baths') }),
    saveAll: async (jobs, baths) => {
      const transaction = db.transaction(['jobs', 'baths'], 'readwrite', { durability: 'strict' });
      const writes = [
        ...jobs.map((job) => transaction.objectStore('jobs').put(job)),
        ...baths.map((bath) => transaction.objectStore('baths').put(bath)),
      ];
      await Promise.all([...writes, transaction.done]);
    },
    close: () => {
      db.close();
    },
  };
}
