import { isBitable } from '../../core/facts/metals.ts';
import { choiceNames } from './fields.ts';
import { metalNames } from './materials.ts';
import { sentenceCase } from './render.ts';
import { storedText } from './stored-text.ts';
import { dayText } from './times.ts';

/** What a job is called until its maker names it: its metal, its shape and the day it was begun. */
export const ownTitle = (metal: string, shape: string, at: number): string =>
  `${sentenceCase(`${isBitable(metal) ? metalNames[metal] : ''} ${storedText(choiceNames, shape)}`.trim())}, ${dayText(at)}`;

/** A day at the end of a name, "3 Nov 2026" or "Nov 3, 2026", and which one of that day. */
const dayAtEnd = /(?:, \p{L}+\.? \d{1,2}, \d{4}|, [^,]*\d[^,]*?)(?: \(\d+\))?$/u;

/** The same name on another day. */
export const titleAgain = (title: string, at: number): string =>
  `${title.replace(dayAtEnd, '')}, ${dayText(at)}`;

/** The same name once more where there are jobs called so: "Fern, 3 Nov 2026 (2)". */
export function titleApart(title: string, taken: ReadonlySet<string>): string {
  if (!taken.has(title)) return title;
  let n = 2;
  while (taken.has(`${title} (${String(n)})`)) n += 1;
  return `${title} (${String(n)})`;
}
