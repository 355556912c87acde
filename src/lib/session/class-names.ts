import { mostNameLetters } from '../core/job/typed-bounds.ts';
import type { Notebook } from '../notebook/store.ts';

/*
 * Whose piece is which. Names of learners stay in this browser: they are kept beside the records, where no file,
 * code or copy of a job takes them along.
 */

/** Names typed for the stations of a class, a text each, a line a piece. */
export type ClassNames = readonly string[];

const keyOf = (id: string): string => `class names ${id}`;

/** What was typed for a job's stations. @param id of the job; empty for the example */
export async function keptNames(book: Notebook, id: string): Promise<ClassNames> {
  const kept = await book.meta(keyOf(id));
  return Array.isArray(kept) ? kept.map((text) => (typeof text === 'string' ? text : '')) : [];
}

export const keepNames = (book: Notebook, id: string, names: ClassNames): Promise<void> =>
  book.saveMeta(keyOf(id), names);

/** What is wrong with a station's text: more lines than pieces, or a line that no card has room for. */
export type NamesFault = 'too-many' | 'too-long';

/** The lines that say something; blank ones between them stand for a piece without a name. */
function linesOf(text: string): readonly string[] {
  const lines = text.split(/\r?\n/).map((line) => line.trim());
  return lines.slice(0, lines.findLastIndex((line) => line !== '') + 1);
}

/** @param pieces of one station */
export function namesFault(text: string, pieces: number): NamesFault | null {
  const lines = linesOf(text);
  if (lines.length > pieces) return 'too-many';
  return lines.some((line) => line.length > mostNameLetters) ? 'too-long' : null;
}

/** A name for each piece of one station, empty where none was typed. */
export function namesOf(text: string, pieces: number): readonly string[] {
  const lines = linesOf(text);
  return Array.from({ length: pieces }, (_, n) => lines[n] ?? '');
}

/** Numbers for all pieces in place of names, counted on from station to station. */
export const numbered = (stations: number, pieces: number): ClassNames =>
  Array.from({ length: stations }, (_, station) =>
    Array.from({ length: pieces }, (_name, n) => String(station * pieces + n + 1)).join('\n'),
  );
