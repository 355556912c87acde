import { fullDayText } from '$words/times.ts';
import type { JobLine } from './jobs.ts';

/** Words of a search: every one of them has to be found. */
const wordsOf = (typed: string): readonly string[] =>
  typed
    .toLocaleLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');

/** What a job is found by: title, note, metal, salt and depth in words, and its date as the maker writes it. */
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

/** Jobs in which all words of a search stand, in the order given. */
export type Finder = (typed: string) => readonly JobLine[];

/** What the jobs are found by is put together once; each search then only looks. */
export function finderIn(lines: readonly JobLine[], named: (id: string) => string): Finder {
  let haystacks: readonly string[] | null = null;
  return (typed) => {
    const words = wordsOf(typed);
    if (words.length === 0) return lines;
    const all = (haystacks ??= lines.map((line) => haystack(line, named)));
    return lines.filter((_, n) => words.every((word) => all[n]?.includes(word)));
  };
}
