import { notebookLines } from '$lib/notebook/export.ts';
import type { Bytes } from '$lib/notebook/file-format.ts';
import type { Own } from '$lib/notebook/import.ts';
import type { StoredPhoto } from '$lib/notebook/photo-store.ts';
import { idOf, PREFERENCES } from '$lib/notebook/store.ts';
import type { Everything, Notebook } from '$lib/notebook/store.ts';

/** Everything that a notebook holds, pictures by their id. */
export interface Whole extends Everything {
  readonly photos: readonly string[];
}

export const nothing: Everything = { jobs: [], baths: [], preferences: undefined };

/** The lines that a notebook is saved as. */
export async function linesFor({
  jobs = [],
  baths = [],
  preferences,
  photos = [],
}: Partial<Everything> & { readonly photos?: readonly StoredPhoto[] }): Promise<string[]> {
  const texts = (records: readonly unknown[]): string[] => records.map((record) => JSON.stringify(record));
  const sources = { jobs: texts(jobs), baths: texts(baths), preferences, photos };
  const lines: string[] = [];
  for await (const line of notebookLines(sources, '0.1.0', 5)) lines.push(new TextDecoder().decode(line));
  return lines;
}

const encoder = new TextEncoder();
/** Lines as they are read. */
export const asBytes = (lines: readonly string[]): Bytes[] => lines.map((line) => encoder.encode(line));

/** A notebook to hold a file against. */
export const ownOf = (all: Partial<Everything> = {}, photoIds: readonly string[] = []): Own => ({
  ids: (of) => Promise.resolve((all[of] ?? []).map(idOf)),
  raw: (of, id) => Promise.resolve((all[of] ?? []).find((record) => idOf(record) === id)),
  preferences: all.preferences,
  photoIds,
});

/** A first version's file, as it was written. */
export const wholeFile = (all: Partial<Everything>): string =>
  JSON.stringify({
    etchwrightNotebook: 1,
    appVersion: '0.1.0',
    savedAt: 5,
    jobs: [],
    baths: [],
    preferences: null,
    ...all,
  });

async function listed<T>(some: AsyncIterable<T>): Promise<T[]> {
  const all: T[] = [];
  for await (const one of some) all.push(one);
  return all;
}

/** Everything in a notebook as stored. */
export const everythingIn = async (book: Notebook): Promise<Whole> => ({
  jobs: (await listed(book.texts('jobs'))).map((text): unknown => JSON.parse(text)),
  baths: (await listed(book.texts('baths'))).map((text): unknown => JSON.parse(text)),
  preferences: await book.meta(PREFERENCES),
  photos: await book.photoIds(),
});

/** Bytes that begin as a JPEG does. */
export const picture = (...rest: number[]): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([0xff, 0xd8, 0xff, ...rest]);
