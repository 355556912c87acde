import { fullDayText } from '$words/times.ts';
import type { JobLine } from './jobs.ts';

/** Words of a search. A job must have all of them. */
const wordsOf = (typed: string): readonly string[] =>
  typed
    .toLocaleLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');

/**
 * The text in which a job is searched: title, note, metal, salt and depth in words, and its date as the maker
 * writes it.
 */
const haystack = (line: JobLine, named: (id: string) => string): string =>
  [
    line.title,
    line.note,
    named(line.metal),
    line.metal,
    named(line.salt),
    line.salt,
    line.depth,
    fullDayText(line.touchedAt),
    new Date(line.touchedAt).toISOString().slice(0, 10),
  ]
    .join(' ')
    .toLocaleLowerCase();

/** Finds the jobs that have all words of a search, in the order of the list. */
export type Finder = (typed: string) => readonly JobLine[];

/** Builds the texts to search once, so that each search only compares. */
export function finderIn(lines: readonly JobLine[], named: (id: string) => string): Finder {
  let haystacks: readonly string[] | null = null;
  return (typed) => {
    const words = wordsOf(typed);
    if (words.length === 0) return lines;
    const all = (haystacks ??= lines.map((line) => haystack(line, named)));
    return lines.filter((_, n) => words.every((word) => all[n]?.includes(word)));
  };
}
