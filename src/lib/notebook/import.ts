import * as v from 'valibot';
import { fileVersion } from './export.ts';
import { sequences } from './migrations.ts';
import { preferences as preferencesSchema } from './records.ts';
import type { BathRecord, JobRecord, Preferences } from './records.ts';
import { idOf, isUnreadable, readBath, readJob, readRecord } from './store.ts';
import type { Everything } from './store.ts';

/** A notebook holds words and numbers only: a larger file is something else. */
export const MOST_BYTES = 20_000_000;
const MEGABYTE = 1_000_000;

/** Why a file is not taken. */
export interface BadFile {
  readonly found: string;
  readonly expected: string;
}

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
  /** cannot be read, but can be kept as they are: nothing here has their place */
  readonly rawJobs: readonly unknown[];
  readonly rawBaths: readonly unknown[];
  /** cannot be read, and their place is taken or unknown */
  readonly leftOut: number;
}

const whole = v.object({
  etchwrightNotebook: v.literal(fileVersion),
  appVersion: v.string(),
  savedAt: v.number(),
  jobs: v.array(v.unknown()),
  baths: v.array(v.unknown()),
  preferences: v.optional(v.unknown(), null),
});

const expected = `a notebook file of Etchwright, version ${fileVersion}`;
const bad = (found: string, wanted = expected): BadFile => ({ found, expected: wanted });

/** Says what a file is that is no notebook. */
function describe(data: unknown): string {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return 'JSON of another kind';
  if ('etchwrightNotebook' in data)
    return `a notebook file of version ${JSON.stringify(data.etchwrightNotebook)}`;
  if ('etchwright' in data) return 'a job file or a printed plan';
  return 'JSON without the mark "etchwrightNotebook"';
}

/** JSON with its keys in order, so that equal records are equal texts. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

interface Read<T> {
  readonly records: readonly T[];
  readonly raw: readonly unknown[];
}

function readAll<T extends object>(raws: readonly unknown[], read: (raw: unknown) => T): Read<T> {
  const seen = raws.map((raw) => ({ raw, record: read(raw) }));
  return {
    records: seen.filter(({ record }) => !isUnreadable(record)).map(({ record }) => record),
    raw: seen.filter(({ record }) => isUnreadable(record)).map(({ raw }) => raw),
  };
}

function sortOut<T>(theirs: readonly T[], mine: ReadonlyMap<string, T>, name: (record: T) => string) {
  const fresh: T[] = [];
  const conflicts: Pair<T>[] = [];
  let same = 0;
  for (const record of theirs) {
    const own = mine.get(name(record));
    if (own === undefined) fresh.push(record);
    else if (canonical(own) === canonical(record)) same += 1;
    else conflicts.push({ mine: own, theirs: record });
  }
  return { fresh, same, conflicts };
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): ReadonlyMap<string, T> =>
  new Map(records.map((record) => [record.id, record]));

/** A record of the file whose place here is held by one that cannot be read must not push it out. */
function awayFrom<T extends { readonly id: string }>(records: readonly T[], taken: ReadonlySet<string>) {
  return records.filter(({ id }) => !taken.has(id));
}

/**
 * Reads a file against the notebook as it stands. Nothing is written.
 * @param text the file's content
 * @param bytes its size
 */
export function dryRun(text: string, bytes: number, own: Everything): DryRun | BadFile {
  if (bytes > MOST_BYTES) {
    return bad(`a file of ${Math.ceil(bytes / MEGABYTE)} MB`, `at most ${MOST_BYTES / MEGABYTE} MB`);
  }
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return bad(`no JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  const parsed = v.safeParse(whole, data);
  if (!parsed.success) {
    const [issue] = parsed.issues;
    const path = v.getDotPath(issue) ?? '';
    const isMarked = describe(data) === `a notebook file of version ${fileVersion}`;
    return isMarked ? bad(`${path}: ${issue.received}`, `${path}: ${issue.expected}`) : bad(describe(data));
  }
  const file = parsed.output;

  const mineJobs = readAll(own.jobs, readJob) as Read<JobRecord>;
  const mineBaths = readAll(own.baths, readBath) as Read<BathRecord>;
  const theirJobs = readAll(file.jobs, readJob) as Read<JobRecord>;
  const theirBaths = readAll(file.baths, readBath) as Read<BathRecord>;
  const rawHere = new Set([...mineJobs.raw, ...mineBaths.raw].map(idOf));
  const jobs = awayFrom(theirJobs.records, rawHere);
  const baths = awayFrom(theirBaths.records, rawHere);

  const placesOf = (raws: readonly unknown[]): ReadonlySet<string> => new Set(raws.map(idOf));
  const canStand = (raw: unknown, places: ReadonlySet<string>): boolean =>
    idOf(raw) !== '' && !places.has(idOf(raw));
  const rawJobs = theirJobs.raw.filter((raw) => canStand(raw, placesOf(own.jobs)));
  const rawBaths = theirBaths.raw.filter((raw) => canStand(raw, placesOf(own.baths)));
  // a second reading of the same file leaves nothing out: what stands here already is the same
  const here = new Set([...own.jobs, ...own.baths].map(canonical));
  const lost = [...theirJobs.raw, ...theirBaths.raw].filter(
    (raw) => !rawJobs.includes(raw) && !rawBaths.includes(raw) && !here.has(canonical(raw)),
  ).length;

  const readPreferences = (raw: unknown): readonly Preferences[] => {
    const read = readRecord(preferencesSchema, raw, sequences.preferences);
    return isUnreadable(read) ? [] : [read];
  };
  const minePreferences = new Map(readPreferences(own.preferences).map((one) => ['', one]));

  return {
    savedAt: file.savedAt,
    appVersion: file.appVersion,
    jobs: sortOut(jobs, byId(mineJobs.records), ({ id }) => id),
    baths: sortOut(baths, byId(mineBaths.records), ({ id }) => id),
    preferences: sortOut(readPreferences(file.preferences), minePreferences, () => ''),
    rawJobs,
    rawBaths,
    leftOut: lost + theirJobs.records.length + theirBaths.records.length - jobs.length - baths.length,
  };
}

export const isBadFile = (read: DryRun | BadFile): read is BadFile => 'found' in read;
