import type { JobLine } from './jobs.ts';

/** Words of a search: every one of them has to be found. */
const wordsOf = (typed: string): readonly string[] =>
  typed
    .toLocaleLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');

/** Made once: making one takes longer than using it. */
const dates = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** What a job is found by: title, note, metal, salt and depth in words, and its date as the maker writes it. */
export const haystack = (line: JobLine, named: (id: string) => string): string =>
  [
    line.title,
    line.note,
    named(line.metal),
    line.metal,
    named(line.salt),
    line.salt,
    line.depth,
    dates.format(line.touchedAt),
    new Date(line.touchedAt).toISOString().slice(0, 10),
  ]
    .join(' ')
    .toLocaleLowerCase();

/** Jobs in which all words of a search stand, in the order given. */
export function found(
  lines: readonly JobLine[],
  typed: string,
  named: (id: string) => string,
): readonly JobLine[] {
  const words = wordsOf(typed);
  if (words.length === 0) return lines;
  return lines.filter((line) => {
    const all = haystack(line, named);
    return words.every((word) => all.includes(word));
  });
}
