import { newId } from './new-id.ts';
import { jobsCsv, readingsCsv } from '../notebook/csv.ts';
import { notebookFile, notebookFileName } from '../notebook/export.ts';
import { dryRun, isBadFile, MOST_BYTES } from '../notebook/import.ts';
import type { BadFile, DryRun } from '../notebook/import.ts';
import { toWrite } from '../notebook/import-choices.ts';
import type { Choices } from '../notebook/import-choices.ts';
import type { UnreadableRecord } from '../notebook/records.ts';
import { openShelf } from './jobs.ts';

/** A file for the browser to hand to the maker. */
export interface Download {
  readonly name: string;
  readonly text: string;
  /** how many records are in it */
  readonly jobs: number;
  readonly baths: number;
}

/** Everything in this browser as one file. */
export async function wholeNotebook(now = new Date()): Promise<Download> {
  const all = await (await openShelf()).everything();
  return {
    name: notebookFileName(now),
    text: notebookFile(all, __APP_VERSION__, now.getTime()),
    jobs: all.jobs.length,
    baths: all.baths.length,
  };
}

/** One record that cannot be read, as it stands. */
export const rawRecord = ({ id, raw }: UnreadableRecord): Download => ({
  name: `etchwright-record-${id.replace(/[^\w-]/g, '') || 'unnamed'}.json`,
  text: JSON.stringify(raw, null, 2),
  jobs: 1,
  baths: 0,
});

/** All jobs, or all their readings, as a table for a spreadsheet. */
export async function notebookTable(which: 'jobs' | 'readings', now = new Date()): Promise<Download> {
  const { records } = await (await openShelf()).jobs();
  return {
    name: notebookFileName(now).replace('notebook', which).replace('.json', '.csv'),
    text: which === 'jobs' ? jobsCsv(records) : readingsCsv(records),
    jobs: records.length,
    baths: 0,
  };
}

/** Hands a file to the browser's downloads. */
export function download({ name, text }: Download): void {
  const type = name.endsWith('.csv') ? 'text/csv' : 'application/json';
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // freed after the browser has had time to take it
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 10_000);
}

/** Reads a file against the notebook here; nothing is written. */
export async function tryFile(file: File): Promise<DryRun | BadFile> {
  const book = await openShelf();
  // the size is judged before the content is read into memory
  const text = file.size > 0 && file.size <= MOST_BYTES ? await file.text() : '';
  return dryRun(text, file.size, await book.everything());
}

/** Writes what was chosen, all or nothing. */
export async function takeFile(run: DryRun, choices: Choices): Promise<void> {
  await (await openShelf()).saveAll(toWrite(run, choices, newId));
}

/** What went wrong with the storage, in words. */
export function storageTrouble(error: unknown): string {
  if (error instanceof Error && error.name === 'QuotaExceededError') {
    return 'The browser’s storage is full. Nothing was changed. Save the notebook as a file, then free some space.';
  }
  return `The browser gives no storage (${error instanceof Error ? error.message : String(error)}). Nothing was changed.`;
}

export { isBadFile };
export type { BadFile, Choices, DryRun };
