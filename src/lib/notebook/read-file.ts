import * as v from 'valibot';
import { beginsAsLines, fileVersion, isBadFile, readLine } from './file-format.ts';
import type { BadFile, LineKind } from './file-format.ts';
import { TooLong } from './file-lines.ts';
import { fromBase64, isPhoto, photoId } from './photo-store.ts';
import type { StoredPhoto } from './photo-store.ts';

/** The first version of the file is read as one text: a larger one is something else, characters. */
export const MOST_AT_ONCE = 20_000_000;

/** What a file holds, its records not read yet. */
export interface Content {
  readonly savedAt: number;
  readonly appVersion: string;
  readonly jobs: readonly unknown[];
  readonly baths: readonly unknown[];
  readonly preferences: unknown;
  readonly photoIds: readonly string[];
}

type Lines = AsyncIterable<string> | Iterable<string>;

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

/** Says what a file is that is no notebook. */
function describe(data: unknown): string {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return 'JSON of another kind';
  if ('etchwrightNotebook' in data)
    return `a notebook file of version ${JSON.stringify(data.etchwrightNotebook)}`;
  if ('etchwright' in data) return 'a job file or a printed plan';
  return 'JSON without the mark "etchwrightNotebook"';
}

/** A value by its schema, or what is wrong with it. */
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

/** A file of the first version: one JSON value. */
function readWhole(text: string): Content | BadFile {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return bad(`no JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  const file = shaped(whole, data, 1);
  return isBadFile(file) ? file : { ...file, photoIds: [] };
}

/** The picture of a line; null when it is none, or not the one that its name says. */
function photoOf(value: unknown): StoredPhoto | null {
  const parsed = v.safeParse(picture, value);
  if (!parsed.success) return null;
  try {
    const bytes = fromBase64(parsed.output.base64);
    return isPhoto(bytes) && photoId(bytes) === parsed.output.id ? { id: parsed.output.id, bytes } : null;
  } catch {
    return null;
  }
}

/** What the lines of a file hold; the lines of pictures are looked at, not kept. */
class Reader {
  #line = 0;
  #head: v.InferOutput<typeof head> | null = null;
  #end: v.InferOutput<typeof end> | null = null;
  readonly #found: Record<Exclude<LineKind, 'head' | 'end'>, unknown[]> = {
    job: [],
    bath: [],
    preferences: [],
    photo: [],
  };

  take(text: string): BadFile | null {
    this.#line += 1;
    const line = readLine(text, this.#line);
    if (isBadFile(line)) return line;
    const { kind, value } = line;
    const place = `line ${String(this.#line)}`;
    if (this.#end || (kind === 'head') === (this.#head !== null)) {
      return bad(`${place}: ${kind}`, 'one head, the records, and one end');
    }
    if (kind === 'head') {
      const read = shaped(head, value, fileVersion);
      if (isBadFile(read)) return read;
      this.#head = read;
    } else if (kind === 'end') {
      const read = v.safeParse(end, value);
      if (!read.success) return bad(`${place}: an end without counts`, 'an end that counts the records');
      this.#end = read.output;
    } else if (kind === 'photo') {
      const photo = photoOf(value);
      if (!photo) return bad(`${place}: no picture of its name`, `${place}: a JPEG and its SHA-256`);
      this.#found.photo.push(photo.id);
    } else this.#found[kind].push(value);
    return null;
  }

  content(): Content | BadFile {
    const { job: jobs, bath: baths, preferences, photo } = this.#found;
    if (!this.#head || !this.#end) return bad('the end is missing: the file was cut short', 'the whole file');
    const counts = { jobs: jobs.length, baths: baths.length, photos: photo.length };
    for (const kind of ['jobs', 'baths', 'photos'] as const) {
      if (counts[kind] !== this.#end[kind]) {
        return bad(`${String(counts[kind])} ${kind}`, `${String(this.#end[kind])} ${kind}, as its end says`);
      }
    }
    const { savedAt, appVersion } = this.#head;
    return {
      savedAt,
      appVersion,
      jobs,
      baths,
      preferences: preferences[0] ?? null,
      photoIds: photo as readonly string[],
    };
  }
}

/** Reads a file of any version. Nothing is compared with the notebook yet, and nothing written. */
export async function readFile(lines: Lines): Promise<Content | BadFile> {
  const reader = new Reader();
  let first: string[] | null = null;
  let length = 0;
  try {
    for await (const line of lines) {
      if (first === null && !beginsAsLines(line) && length === 0) first = [];
      length += line.length + 1;
      if (first) {
        if (length > MOST_AT_ONCE) return bad('a larger file', `at most ${String(MOST_AT_ONCE / 1e6)} MB`);
        first.push(line);
        continue;
      }
      const fault = reader.take(line);
      if (fault) return fault;
    }
  } catch (error) {
    if (error instanceof TooLong) return bad('a line longer than any record');
    if (error instanceof TypeError) return bad('no text');
    throw error;
  }
  return first || length === 0 ? readWhole((first ?? []).join('\n')) : reader.content();
}

/** The pictures that are wanted of a file that has been read. */
export async function* photosIn(
  lines: Lines,
  wanted: ReadonlySet<string>,
): AsyncGenerator<StoredPhoto, void> {
  let number = 0;
  for await (const text of lines) {
    number += 1;
    if (!text.includes('","photo":')) continue;
    const line = readLine(text, number);
    if (isBadFile(line) || line.kind !== 'photo') continue;
    const photo = photoOf(line.value);
    if (photo && wanted.has(photo.id)) yield photo;
  }
}
