import { notebookLines } from '$lib/notebook/export.ts';
import type { Sources } from '$lib/notebook/export.ts';
import type { Own } from '$lib/notebook/import.ts';
import { idOf, PREFERENCES } from '$lib/notebook/store.ts';
import type { Everything, Notebook } from '$lib/notebook/store.ts';

/** Everything that a notebook holds, pictures by their id. */
export interface Whole extends Everything {
  readonly photos: readonly string[];
}

export const nothing: Everything = { jobs: [], baths: [], preferences: undefined };

/** The lines that a notebook is saved as. */
export async function linesFor(all: Partial<Sources>): Promise<string[]> {
  const lines: string[] = [];
  const sources = { ...nothing, photos: [], ...all };
  for await (const line of notebookLines(sources, '0.1.0', 5)) lines.push(line.trimEnd());
  return lines;
}

/** A notebook to hold a file against. */
export const ownOf = (all: Partial<Everything> = {}, photoIds: readonly string[] = []): Own => ({
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
  jobs: await listed(book.stored('jobs')),
  baths: await listed(book.stored('baths')),
  preferences: await book.meta(PREFERENCES),
  photos: await book.photoIds(),
});

/** Bytes that begin as a JPEG does. */
export const picture = (...rest: number[]): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([0xff, 0xd8, 0xff, ...rest]);
