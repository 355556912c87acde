import type { Boxed } from './boxed.ts';
import { isBadFile } from './file-format.ts';
import type { BadFile, Bytes } from './file-format.ts';
import { sequences } from './migrations.ts';
import { readFile } from './read-file.ts';
import { preferences as preferencesSchema } from './records.ts';
import type { BathRecord, JobRecord, Preferences, UnreadableRecord } from './records.ts';
import { idOf, isUnreadable, readBath, readJob, readRecord } from './store.ts';

/** Two records with the same id that differ. */
export interface Conflict<T> {
  readonly mine: T;
  readonly theirs: T;
}

/**
 * One kind of record, sorted by what loading the file would do. `F` is how a new record is held until it is
 * written.
 */
export interface Sorted<T, F = T> {
  readonly fresh: readonly F[];
  readonly same: number;
  readonly conflicts: readonly Conflict<T>[];
}

/** What loading a file would do. Nothing has been written yet. */
export interface DryRun {
  readonly savedAt: number;
  readonly appVersion: string;
  /** new jobs stay texts: thousands of parsed jobs would fill a phone's memory */
  readonly jobs: Sorted<JobRecord, Boxed>;
  readonly baths: Sorted<BathRecord>;
  readonly preferences: Sorted<Preferences>;
  /** `fresh`: ids of pictures that are not here yet */
  readonly photos: { readonly fresh: ReadonlySet<string>; readonly same: number };
  /** jobs that cannot be read but can be kept unchanged, since their id is free here */
  readonly rawJobs: readonly unknown[];
  readonly rawBaths: readonly unknown[];
  /** number of records that cannot be read and whose id is taken or unknown */
  readonly leftOut: number;
}

/** The notebook that a file is compared with, read record by record. */
export interface Own {
  ids(of: 'jobs' | 'baths'): Promise<readonly string[]>;
  raw(of: 'jobs' | 'baths', id: string): Promise<unknown>;
  readonly preferences: unknown;
  readonly photoIds: readonly string[];
}

/** JSON with its keys in order, so that equal records are equal texts. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

/** Compares the texts first: most records are unchanged, so their texts are already equal. */
const isEqual = (one: unknown, other: unknown): boolean =>
  JSON.stringify(one) === JSON.stringify(other) || canonical(one) === canonical(other);

/** Sorts the records of one kind as they are read. */
class Sorter<T extends { readonly id: string }, F> implements Sorted<T, F> {
  readonly fresh: F[] = [];
  readonly conflicts: Conflict<T>[] = [];
  readonly raw: unknown[] = [];
  same = 0;
  leftOut = 0;
  readonly #seen = new Set<string>();
  readonly #here: ReadonlySet<string>;
  readonly #read: (raw: unknown) => T | UnreadableRecord;
  readonly #own: (id: string) => Promise<unknown>;
  readonly #keep: (record: T, text: string) => F;

  constructor(
    ids: readonly string[],
    read: (raw: unknown) => T | UnreadableRecord,
    own: (id: string) => Promise<unknown>,
    keep: (record: T, text: string) => F,
  ) {
    this.#here = new Set(ids);
    this.#read = read;
    this.#own = own;
    this.#keep = keep;
  }

  async add(stored: unknown, text: string): Promise<void> {
    const id = idOf(stored);
    if (id === '' || this.#seen.has(id)) {
      this.leftOut += 1;
      return;
    }
    this.#seen.add(id);
    const record = this.#read(stored);
    if (!this.#here.has(id)) {
      if (isUnreadable(record)) this.raw.push(stored);
      else this.fresh.push(this.#keep(record, text));
      return;
    }
    const here = await this.#own(id);
    if (isUnreadable(record)) {
      if (!isEqual(here, stored)) this.leftOut += 1;
      return;
    }
    const mine = this.#read(here);
    // a record here that cannot be read must not be overwritten
    if (isUnreadable(mine)) this.leftOut += 1;
    else if (isEqual(mine, record)) this.same += 1;
    else this.conflicts.push({ mine, theirs: record });
  }
}

function sortPreferences(theirs: unknown, own: unknown): Sorted<Preferences> {
  const read = (stored: unknown): Preferences | null => {
    const record = readRecord(preferencesSchema, stored, sequences.preferences);
    return isUnreadable(record) ? null : record;
  };
  const [mine, given] = [read(own), read(theirs)];
  if (!given) return { fresh: [], same: 0, conflicts: [] };
  if (!mine) return { fresh: [given], same: 0, conflicts: [] };
  return isEqual(mine, given)
    ? { fresh: [], same: 1, conflicts: [] }
    : { fresh: [], same: 0, conflicts: [{ mine, theirs: given }] };
}

/** A job is stored as the file has it. It is migrated each time it is read. */
const asText = ({ id }: JobRecord, text: string): Boxed => ({ id, text });

/**
 * Compares a file with the notebook. Nothing is written.
 * @param lines of the file
 */
export async function dryRun(
  lines: AsyncIterable<Bytes> | Iterable<Bytes>,
  own: Own,
): Promise<DryRun | BadFile> {
  const jobs = new Sorter(await own.ids('jobs'), readJob, (id) => own.raw('jobs', id), asText);
  const baths = new Sorter(
    await own.ids('baths'),
    readBath,
    (id) => own.raw('baths', id),
    (bath: BathRecord) => bath,
  );
  const photosHere = new Set(own.photoIds);
  const fresh = new Set<string>();
  let [samePhotos, preferences] = [0, null as unknown];
  const file = await readFile(lines, async (kind, value, text) => {
    if (kind === 'job') await jobs.add(value, text);
    else if (kind === 'bath') await baths.add(value, text);
    else if (kind === 'preferences') preferences = value;
    else if (photosHere.has(value as string)) samePhotos += 1;
    else fresh.add(value as string);
  });
  if (isBadFile(file)) return file;
  return {
    savedAt: file.savedAt,
    appVersion: file.appVersion,
    jobs,
    baths,
    preferences: sortPreferences(preferences, own.preferences),
    photos: { fresh, same: samePhotos },
    rawJobs: jobs.raw,
    rawBaths: baths.raw,
    leftOut: jobs.leftOut + baths.leftOut,
  };
}

export { isBadFile };
export type { BadFile };
