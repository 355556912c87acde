import { newId } from './new-id.ts';
import { jobsCsv, readingsCsv } from '../notebook/csv.ts';
import { notebookFileName, notebookLines } from '../notebook/export.ts';
import { linesOf } from '../notebook/file-lines.ts';
import { dryRun, isBadFile } from '../notebook/import.ts';
import type { BadFile, DryRun } from '../notebook/import.ts';
import { toWrite } from '../notebook/import-choices.ts';
import type { Bytes } from '../notebook/file-format.ts';
import type { Choices } from '../notebook/import-choices.ts';
import type { StoredPhoto } from '../notebook/photo-store.ts';
import { photosIn } from '../notebook/read-file.ts';
import { PREFERENCES } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { photosMissing } from '$words/notebook.ts';
import { jobsHere, openNotebook } from './jobs.ts';
import { photoIdsIn } from './photo-ids.ts';
import { isPowered } from './powered.ts';

/** A file for the browser to download. */
export interface Download {
  readonly name: string;
  readonly content: Blob;
}

/**
 * A file larger than this is not a notebook, bytes. A thousand jobs with their pictures are a tenth of it.
 */
const MOST_BYTES = 2_000_000_000;
/** Lines are joined to pieces of this size before the browser gets them, bytes. */
const CHUNK = 4_000_000;

async function blobOf(lines: AsyncIterable<Bytes>): Promise<Blob> {
  const parts: Blob[] = [];
  let some: BlobPart[] = [];
  let length = 0;
  const hand = (): void => {
    parts.push(new Blob(some));
    some = [];
    length = 0;
  };
  for await (const line of lines) {
    some.push(line, '\n');
    length += line.length;
    if (length > CHUNK) hand();
  }
  hand();
  return new Blob(parts, { type: 'text/plain' });
}

/** The wanted pictures, one at a time. */
async function* photosOf(
  book: Notebook,
  isWanted: (id: string) => boolean,
): AsyncGenerator<StoredPhoto, void> {
  for (const id of await book.photoIds()) {
    const photo = isWanted(id) ? await book.photo(id) : null;
    if (photo) yield photo;
  }
}

/** Everything in this browser as one file, except pictures that no job shows any more. */
export async function wholeNotebook(now = new Date()): Promise<Download & { jobs: number; baths: number }> {
  const book = await openNotebook();
  const { unreadable } = await jobsHere();
  const wanted = new Set<string>();
  const counts = { jobs: 0, baths: 0 };
  async function* counted(of: 'jobs' | 'baths'): AsyncGenerator<string, void> {
    for await (const text of book.texts(of)) {
      counts[of] += 1;
      // most jobs have no pictures: checking the text saves parsing them
      if (of === 'jobs' && text.includes('"photos"')) {
        for (const id of photoIdsIn(JSON.parse(text))) wanted.add(id);
      }
      yield text;
    }
  }
  const lines = notebookLines(
    {
      jobs: counted('jobs'),
      baths: counted('baths'),
      preferences: await book.meta(PREFERENCES),
      // a job that cannot be read may refer to pictures in an unknown way
      photos: photosOf(book, (id) => unreadable.length > 0 || wanted.has(id)),
    },
    __APP_VERSION__,
    now.getTime(),
  );
  return { name: notebookFileName(now), content: await blobOf(lines), ...counts };
}

/** One record that cannot be read, as it is stored. */
export const rawRecord = async (id: string): Promise<Download> => ({
  name: `etchwright-record-${id.replace(/[^\w-]/g, '') || 'unnamed'}.json`,
  content: new Blob([JSON.stringify(await (await openNotebook()).raw('jobs', id), null, 2)], {
    type: 'application/json',
  }),
});

/** All jobs, or all their readings, as a table for a spreadsheet. */
export async function notebookTable(which: 'jobs' | 'readings', now = new Date()): Promise<Download> {
  const { records } = await (await openNotebook()).jobs();
  return {
    name: notebookFileName(now).replace('notebook', which).replace('.txt', '.csv'),
    content: new Blob([which === 'jobs' ? jobsCsv(records) : readingsCsv(records)], { type: 'text/csv' }),
  };
}

/** Starts a download. */
export function download({ name, content }: Download): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // give the browser time to save it before the address is freed
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 10_000);
}

/** Compares a file with the notebook. Nothing is written. */
export async function tryFile(file: File): Promise<DryRun | BadFile> {
  if (file.size > MOST_BYTES) {
    return {
      found: `a file of ${String(Math.ceil(file.size / 1e6))} MB`,
      expected: `at most ${String(MOST_BYTES / 1e6)} MB`,
    };
  }
  const book = await openNotebook();
  return dryRun(linesOf(file), {
    ids: (of) => book.ids(of),
    raw: (of, id) => book.raw(of, id),
    preferences: await book.meta(PREFERENCES),
    photoIds: await book.photoIds(),
  });
}

/**
 * Writes what the maker chose: all records or none, then the pictures one by one.
 * @param file is read again for the pictures, so that they are never all in memory
 * @returns why pictures are missing, although all records are saved; null when none are missing
 */
export async function takeFile(run: DryRun, choices: Choices, file: File): Promise<string | null> {
  const book = await openNotebook();
  await book.saveAll(toWrite(run, choices, newId, isPowered));
  let left = run.photos.fresh.size;
  if (left === 0) return null;
  try {
    for await (const photo of photosIn(linesOf(file), run.photos.fresh)) {
      await book.savePhoto(photo);
      left -= 1;
    }
    return left === 0 ? null : photosMissing(left, '');
  } catch (error) {
    return photosMissing(left, error instanceof Error ? error.name : String(error));
  }
}

/** The message for a problem with the storage. */
export function storageTrouble(error: unknown): string {
  if (error instanceof Error && error.name === 'QuotaExceededError') {
    return 'The browser’s storage is full. Nothing was changed. Save the notebook as a file, then free some space.';
  }
  return `The browser gives no storage (${error instanceof Error ? error.message : String(error)}). Nothing was changed.`;
}

export { isBadFile };
export type { BadFile, Choices, DryRun };
