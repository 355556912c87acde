import type { DBSchema, IDBPDatabase } from 'idb';

/** Kinds of short facts about a job, kept beside it so that long lists need not read every job. */
export const derivedKinds = ['line', 'told'] as const;
export type DerivedKind = (typeof derivedKinds)[number];

interface Derived {
  /** version of the app that made it */
  readonly by: string;
  readonly value: unknown;
}

/** Where they are kept: one a kind and job. */
export interface DerivedShape extends DBSchema {
  jobs: { key: string; value: unknown };
  derived: { key: [kind: string, id: string]; value: Derived };
}

/** Jobs read in one transaction. */
const BATCH = 50;
const all = (kind: DerivedKind): IDBKeyRange => IDBKeyRange.bound([kind], [kind, []]);

/**
 * One short fact for each job, by its id: as kept, or made now and kept. Whoever writes a job takes what is kept
 * of it away in the same transaction.
 * @param make from a job as stored
 * @param by version of the app: what another one made is made anew
 */
export async function derivedFrom<T>(
  db: IDBPDatabase<DerivedShape>,
  kind: DerivedKind,
  make: (raw: unknown) => T,
  by: string,
): Promise<ReadonlyMap<string, T>> {
  const reading = db.transaction(['jobs', 'derived']);
  const [ids, keys, values] = await Promise.all([
    reading.objectStore('jobs').getAllKeys(),
    reading.objectStore('derived').getAllKeys(all(kind)),
    reading.objectStore('derived').getAll(all(kind)),
  ]);
  const found = new Map<string, T>();
  keys.forEach(([, id], n) => {
    const kept = values[n];
    if (kept?.by === by) found.set(id, kept.value as T);
  });
  const missing = ids.filter((id) => !found.has(id));
  for (let from = 0; from < missing.length; from += BATCH) {
    const writing = db.transaction(['jobs', 'derived'], 'readwrite', { durability: 'relaxed' });
    for (const id of missing.slice(from, from + BATCH)) {
      const raw = await writing.objectStore('jobs').get(id);
      if (raw === undefined) continue;
      const value = make(raw);
      found.set(id, value);
      await writing.objectStore('derived').put({ by, value }, [kind, id]);
    }
    await writing.done;
  }
  return found;
}
