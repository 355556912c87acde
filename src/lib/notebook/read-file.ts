import * as v from 'valibot';
import { fileVersion, headOf, isBadFile, readLine } from './file-format.ts';
import type { BadFile, Bytes, LineKind } from './file-format.ts';
import { LONGEST_AT_ONCE, TooLong } from './file-lines.ts';
import { fromBase64, isPhoto } from './photo-store.ts';
import type { StoredPhoto } from './photo-store.ts';
import { sha256Of } from './sha256.ts';

/** What a file says about itself. */
export interface Head {
  readonly savedAt: number;
  readonly appVersion: string;
}

type RecordKind = Exclude<LineKind, 'head' | 'end'>;

/**
 * Receives one record after another: the id of a picture, or the value of any other record, with its JSON.
 */
export type Take = (kind: RecordKind, value: unknown, text: string) => Promise<void>;

type Lines = AsyncIterable<Bytes> | Iterable<Bytes>;

const whole = v.object({
  etchwrightNotebook: v.literal(1),
  appVersion: v.string(),
  savedAt: v.number(),
  jobs: v.array(v.unknown()),
  baths: v.array(v.unknown()),
  preferences: v.optional(v.unknown(), null),
});
const head = v.object({
  etchwrightNotebook: v.literal(fileVersion),
  appVersion: v.string(),
  savedAt: v.number(),
});
const end = v.object({ jobs: v.number(), baths: v.number(), photos: v.number() });
const picture = v.object({ id: v.string(), base64: v.string() });

const expected = `a notebook file of Etchwright, version 1 to ${fileVersion}`;
const bad = (found: string, wanted = expected): BadFile => ({ found, expected: wanted });

/** Describes a file that is not a notebook, for the error message. */
function describe(data: unknown): string {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return 'JSON of another kind';
  if ('etchwrightNotebook' in data)
    return `a notebook file of version ${JSON.stringify(data.etchwrightNotebook)}`;
  if ('etchwright' in data) return 'a job file or a printed plan';
  return 'JSON without the mark "etchwrightNotebook"';
}

/** A value checked by its schema, or what is wrong with it. */
function shaped<S extends v.GenericSchema>(
  schema: S,
  data: unknown,
  version: number,
): v.InferOutput<S> | BadFile {
  const parsed = v.safeParse(schema, data);
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  const path = v.getDotPath(issue) ?? '';
  const isMarked = describe(data) === `a notebook file of version ${version}`;
  return isMarked ? bad(`${path}: ${issue.received}`, `${path}: ${issue.expected}`) : bad(describe(data));
}

/** Reads a file of version 1: one JSON value, on any number of lines. */
async function readWhole(lines: readonly Bytes[], take: Take): Promise<Head | BadFile> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let data: unknown;
  try {
    data = JSON.parse(lines.map((line) => decoder.decode(line)).join('\n'));
  } catch (error) {
    if (error instanceof TypeError) return bad('no text');
    return bad(`no JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  const file = shaped(whole, data, 1);
  if (isBadFile(file)) return file;
  for (const job of file.jobs) await take('job', job, JSON.stringify(job));
  for (const bath of file.baths) await take('bath', bath, '');
  await take('preferences', file.preferences, '');
  return file;
}

/** The picture on a line; null when it is not a picture, or does not match its name. */
async function photoOf(value: unknown): Promise<StoredPhoto | null> {
  const parsed = v.safeParse(picture, value);
  if (!parsed.success) return null;
  const { id, base64 } = parsed.output;
  try {
    const bytes = fromBase64(base64);
    return isPhoto(bytes) && (await sha256Of(bytes)) === id ? { id, bytes } : null;
  } catch {
    return null;
  }
}

/** Reads a file line by line and checks that it is complete. */
class Reader {
  #line = 0;
  #head: v.InferOutput<typeof head> | null = null;
  #end: v.InferOutput<typeof end> | null = null;
  readonly #counts: Record<RecordKind, number> = { job: 0, bath: 0, preferences: 0, photo: 0 };
  readonly #take: Take;

  constructor(take: Take) {
    this.#take = take;
  }

  async read(bytes: Bytes): Promise<BadFile | null> {
    this.#line += 1;
    const line = await readLine(bytes, this.#line);
    if (isBadFile(line)) return line;
    const { kind, value, text } = line;
    const place = `line ${String(this.#line)}`;
    if (this.#end || (kind === 'head') === (this.#head !== null)) {
      return bad(`${place}: ${kind}`, 'one head, the records, and one end');
    }
    if (kind === 'head') {
      const read = shaped(head, value, fileVersion);
      if (isBadFile(read)) return read;
      this.#head = read;
      return null;
    }
    if (kind === 'end') {
      const read = v.safeParse(end, value);
      if (!read.success) return bad(`${place}: an end without counts`, 'an end that counts the records');
      this.#end = read.output;
      return null;
    }
    this.#counts[kind] += 1;
    if (kind !== 'photo') {
      await this.#take(kind, value, text);
      return null;
    }
    const photo = await photoOf(value);
    if (!photo) return bad(`${place}: no picture of its name`, `${place}: a JPEG and its SHA-256`);
    await this.#take(kind, photo.id, '');
    return null;
  }

  done(): Head | BadFile {
    if (!this.#head || !this.#end) return bad('the end is missing: the file was cut short', 'the whole file');
    const { job: jobs, bath: baths, photo: photos } = this.#counts;
    const counts = { jobs, baths, photos };
    for (const kind of ['jobs', 'baths', 'photos'] as const) {
      if (counts[kind] !== this.#end[kind]) {
        return bad(`${String(counts[kind])} ${kind}`, `${String(this.#end[kind])} ${kind}, as its end says`);
      }
    }
    return this.#head;
  }
}

/**
 * Reads a file of any version. It does not compare it with the notebook, and writes nothing.
 * @param take receives records as they are read, before the file is known to be complete
 */
export async function readFile(lines: Lines, take: Take): Promise<Head | BadFile> {
  const reader = new Reader(take);
  /** lines of a file of version 1 */
  const old: Bytes[] = [];
  let [isOld, size] = [true, 0];
  try {
    for await (const line of lines) {
      if (size === 0) isOld = headOf(line) === null;
      size += line.length + 1;
      if (isOld) {
        if (size > LONGEST_AT_ONCE) throw new TooLong();
        old.push(line);
        continue;
      }
      const fault = await reader.read(line);
      if (fault) return fault;
    }
  } catch (error) {
    if (error instanceof TooLong) return bad('a line longer than any record');
    throw error;
  }
  return isOld ? readWhole(old, take) : reader.done();
}

/** The pictures with these ids in a file that has been read before. */
export async function* photosIn(
  lines: Lines,
  wanted: ReadonlySet<string>,
): AsyncGenerator<StoredPhoto, void> {
  let number = 0;
  for await (const bytes of lines) {
    number += 1;
    if (headOf(bytes)?.kind !== 'photo') continue;
    const line = await readLine(bytes, number);
    const photo = isBadFile(line) ? null : await photoOf(line.value);
    if (photo && wanted.has(photo.id)) yield photo;
  }
}
