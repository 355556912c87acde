import { isBitable } from '../../core/facts/metals.ts';
import { choiceNames } from './fields.ts';
import { metalNames } from './materials.ts';
import { sentenceCase } from './render.ts';
import { storedText } from './stored-text.ts';
import { dayText } from './times.ts';

/** Name of a job until the maker gives it one: its metal, its shape and the day it was begun. */
export const ownTitle = (metal: string, shape: string, at: number): string =>
  `${sentenceCase(`${isBitable(metal) ? metalNames[metal] : ''} ${storedText(choiceNames, shape)}`.trim())}, ${dayText(at)}`;

/**
 * Matches a day at the end of a name, "3 Nov 2026" or "Nov 3, 2026", and the number in brackets
 * after it, if any.
 */
const dayAtEnd = /(?:, \p{L}+\.? \d{1,2}, \d{4}|, [^,]*\d[^,]*?)(?: \(\d+\))?$/u;

/** The same name with another day. */
export const titleAgain = (title: string, at: number): string =>
  `${title.replace(dayAtEnd, '')}, ${dayText(at)}`;

/** The name, with a number added where other jobs have the same one: "Fern, 3 Nov 2026 (2)". */
export function titleApart(title: string, taken: ReadonlySet<string>): string {
  if (!taken.has(title)) return title;
  let n = 2;
  while (taken.has(`${title} (${String(n)})`)) n += 1;
  return `${title} (${String(n)})`;
}
