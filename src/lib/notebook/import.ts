import { isBadFile } from './file-format.ts';
import type { BadFile } from './file-format.ts';
import { sequences } from './migrations.ts';
import { readFile } from './read-file.ts';
import { preferences as preferencesSchema } from './records.ts';
import type { BathRecord, JobRecord, Preferences, UnreadableRecord } from './records.ts';
import { idOf, isUnreadable, readBath, readJob, readRecord } from './store.ts';

/** Two records of one name that differ. */
export interface Pair<T> {
  readonly mine: T;
  readonly theirs: T;
}

/** One kind of record, sorted by what taking it would do. */
export interface Sorted<T> {
  readonly fresh: readonly T[];
  readonly same: number;
  readonly conflicts: readonly Pair<T>[];
}

/** What taking a file would do: nothing has been written yet. */
export interface DryRun {
  readonly savedAt: number;
  readonly appVersion: string;
  readonly jobs: Sorted<JobRecord>;
  readonly baths: Sorted<BathRecord>;
  readonly preferences: Sorted<Preferences>;
  /** ids of pictures that are not here */
  readonly photos: { readonly fresh: ReadonlySet<string>; readonly same: number };
  /** cannot be read, but can be kept as they are: nothing here has their place */
  readonly rawJobs: readonly unknown[];
  readonly rawBaths: readonly unknown[];
  /** cannot be read, or their place is taken or unknown */
  readonly leftOut: number;
}

/** The notebook that a file is held against, asked record by record. */
export interface Own {
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

/** Most records have come and gone unchanged: their texts are equal as they are. */
const isEqual = (one: unknown, other: unknown): boolean =>
  JSON.stringify(one) === JSON.stringify(other) || canonical(one) === canonical(other);

interface SortedRaw<T> extends Sorted<T> {
  readonly raw: readonly unknown[];
  readonly leftOut: number;
}

async function sortOut<T extends { readonly id: string }>(
  theirs: readonly unknown[],
  read: (raw: unknown) => T | UnreadableRecord,
  own: (id: string) => Promise<unknown>,
): Promise<SortedRaw<T>> {
  const fresh: T[] = [];
  const conflicts: Pair<T>[] = [];
  const raw: unknown[] = [];
  const seen = new Set<string>();
  let [same, leftOut] = [0, 0];
  for (const stored of theirs) {
    const id = idOf(stored);
    const isNamedTwice = seen.has(id);
    seen.add(id);
    const here = id === '' ? undefined : await own(id);
    const record = read(stored);
    if (id === '' || isNamedTwice) leftOut += 1;
    else if (isUnreadable(record)) {
      if (here === undefined) raw.push(stored);
      else if (!isEqual(here, stored)) leftOut += 1;
    } else if (here === undefined) fresh.push(record);
    else {
      const mine = read(here);
      // a record here that cannot be read must not be pushed out
      if (isUnreadable(mine)) leftOut += 1;
      else if (isEqual(mine, record)) same += 1;
      else conflicts.push({ mine, theirs: record });
    }
  }
  return { fresh, same, conflicts, raw, leftOut };
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

/**
 * Reads a file against the notebook as it stands. Nothing is written.
 * @param lines of the file
 */
export async function dryRun(
  lines: AsyncIterable<string> | Iterable<string>,
  own: Own,
): Promise<DryRun | BadFile> {
  const file = await readFile(lines);
  if (isBadFile(file)) return file;
  const jobs = await sortOut(file.jobs, readJob, (id) => own.raw('jobs', id));
  const baths = await sortOut(file.baths, readBath, (id) => own.raw('baths', id));
  const here = new Set(own.photoIds);
  const fresh = new Set(file.photoIds.filter((id) => !here.has(id)));
  return {
    savedAt: file.savedAt,
    appVersion: file.appVersion,
    jobs,
    baths,
    preferences: sortPreferences(file.preferences, own.preferences),
    photos: { fresh, same: file.photoIds.length - fresh.size },
    rawJobs: jobs.raw,
    rawBaths: baths.raw,
    leftOut: jobs.leftOut + baths.leftOut,
  };
}

export { isBadFile };
export type { BadFile };
