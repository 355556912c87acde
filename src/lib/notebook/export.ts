import { fileVersion, lineOf } from './file-format.ts';
import type { Bytes } from './file-format.ts';
import { toBase64 } from './photo-store.ts';
import type { StoredPhoto } from './photo-store.ts';

type Some<T> = AsyncIterable<T> | Iterable<T>;

/**
 * What goes into a file: every record as stored, also those that cannot be read. Jobs and baths are JSON
 * texts.
 */
export interface Sources {
  readonly jobs: Some<string>;
  readonly baths: Some<string>;
  readonly preferences: unknown;
  readonly photos: Some<StoredPhoto>;
}

/** The whole notebook, line by line. */
export async function* notebookLines(
  { jobs, baths, preferences, photos }: Sources,
  appVersion: string,
  savedAt: number,
): AsyncGenerator<Bytes, void> {
  yield lineOf('head', JSON.stringify({ etchwrightNotebook: fileVersion, appVersion, savedAt }));
  const counts = { jobs: 0, baths: 0, photos: 0 };
  for await (const job of jobs) {
    counts.jobs += 1;
    yield lineOf('job', job);
  }
  for await (const bath of baths) {
    counts.baths += 1;
    yield lineOf('bath', bath);
  }
  if (preferences !== undefined && preferences !== null)
    yield lineOf('preferences', JSON.stringify(preferences));
  for await (const { id, bytes } of photos) {
    counts.photos += 1;
    yield lineOf('photo', JSON.stringify({ id, base64: toBase64(bytes) }));
  }
  yield lineOf('end', JSON.stringify(counts));
}

const two = (n: number): string => String(n).padStart(2, '0');

/** The file's name, with the local date. It ends in .txt, because every phone can share text. */
export const notebookFileName = (day: Date): string =>
  `etchwright-notebook-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.txt`;
