import type { Everything } from './store.ts';

/** Format of the one file that holds a whole notebook. */
export const fileVersion = 1;

/** The whole notebook as one file's text: every record as stored, those that cannot be read included. */
export function notebookFile(all: Everything, appVersion: string, savedAt: number): string {
  const { jobs, baths, preferences = null } = all;
  return JSON.stringify({ etchwrightNotebook: fileVersion, appVersion, savedAt, jobs, baths, preferences });
}

const two = (n: number): string => String(n).padStart(2, '0');

/** The file's name, by the maker's own calendar. */
export const notebookFileName = (day: Date): string =>
  `etchwright-notebook-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.json`;
