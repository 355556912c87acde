import type { DBSchema, IDBPDatabase } from 'idb';

/**
 * Kinds of short facts about jobs. They are kept beside the jobs, so that long lists need not read every job.
 */
export const derivedKinds = ['line', 'told'] as const;
export type DerivedKind = (typeof derivedKinds)[number];

/** All facts of one kind as one text, because reading one value is twenty times faster than reading many. */
interface Sheet {
  /** version of the app that made it */
  readonly by: string;
  /** changes with every new state of the sheet */
  readonly stamp: number;
  /** JSON of pairs, id and fact */
  readonly text: string;
}

/**
 * Sheets are kept under their kind, and under kind and id a mark for each job written since the sheet was.
 */
export interface DerivedShape extends DBSchema {
  jobs: { key: string; value: unknown };
  derived: { key: [kind: string] | [kind: string, id: string]; value: Sheet | number };
}

/** Jobs read in one transaction. */
const BATCH = 200;

const isSheet = (value: Sheet | number | undefined): value is Sheet => typeof value === 'object';
const marksOf = (kind: DerivedKind): IDBKeyRange => IDBKeyRange.bound([kind, ''], [kind, []]);

/** A number that differs for every state. */
const stamp = (): number => Math.random();

/**
 * Marks to store in the same transaction when a job is written or deleted, because its facts are then out of
 * date.
 */
export const marksFor = (id: string): readonly { readonly key: [string, string]; readonly value: number }[] =>
  derivedKinds.map((kind) => ({ key: [kind, id], value: stamp() }));

/** The facts as last stored, and what has changed since. */
async function standing<T>(db: IDBPDatabase<DerivedShape>, kind: DerivedKind, by: string) {
  const reading = db.transaction(['jobs', 'derived']);
  const derived = reading.objectStore('derived');
  const [ids, sheet, markKeys, markValues] = await Promise.all([
    reading.objectStore('jobs').getAllKeys(),
    derived.get([kind]),
    derived.getAllKeys(marksOf(kind)),
    derived.getAll(marksOf(kind)),
  ]);
  const marks = new Map(markKeys.map((key, n) => [key[1] ?? '', markValues[n]]));
  const kept = isSheet(sheet) && sheet.by === by ? (JSON.parse(sheet.text) as [string, T][]) : [];
  const here = new Set(ids);
  const facts = new Map(kept.filter(([id]) => here.has(id) && !marks.has(id)));
  return { ids, sheet, marks, facts, isTrue: facts.size === kept.length && kept.length === ids.length };
}

/**
 * One short fact for each job, by its id: read if it is stored and still true, otherwise made and stored.
 * @param make from a job as stored
 * @param by version of the app; facts of another version are made again
 */
export async function derivedFrom<T>(
  db: IDBPDatabase<DerivedShape>,
  kind: DerivedKind,
  make: (stored: unknown) => T,
  by: string,
): Promise<ReadonlyMap<string, T>> {
  const { ids, sheet, marks, facts, isTrue } = await standing<T>(db, kind, by);
  if (isTrue) return facts;
  const missing = ids.filter((id) => !facts.has(id));
  for (let from = 0; from < missing.length; from += BATCH) {
    const batch = missing.slice(from, from + BATCH);
    const { store } = db.transaction('jobs');
    const stored = await Promise.all(batch.map((id) => store.get(id)));
    batch.forEach((id, n) => {
      if (stored[n] !== undefined) facts.set(id, make(stored[n]));
    });
  }
  const writing = db.transaction('derived', 'readwrite', { durability: 'relaxed' });
  const now = await writing.store.get([kind]);
  const stampOf = (value: Sheet | number | undefined) => (isSheet(value) ? value.stamp : null);
  // write only if no other page has stored a newer sheet meanwhile: it may have removed marks that this page
  // has not seen
  if (stampOf(now) === stampOf(sheet)) {
    await writing.store.put({ by, stamp: stamp(), text: JSON.stringify([...facts]) }, [kind]);
    for (const [id, seen] of marks) {
      if ((await writing.store.get([kind, id])) === seen) await writing.store.delete([kind, id]);
    }
  }
  await writing.done;
  return facts;
}
