import { clockTime, dayText } from './times.ts';

/** Texts of the start page. Names of steps and metals are elsewhere, so that this page opens without them. */
export const home = {
  description: 'A guide through salt-water electrolytic etching for makers of small jewellery.',
  lead: 'Etch a design into silver, copper or brass with salt water and a low voltage, to the depth you chose.',
  what: 'What it does, and does not',
  about:
    'It works out the salt, the amps, the minutes and the depth for your piece in your tub, with honest ranges, and says what can hurt you before each step. It cannot switch your supply. The label or data sheet of the bottle in your hand wins over anything here, and so do local rules.',
  start: 'Start a job',
  ways: 'Elsewhere',
  wear: 'What to wear',
  shelf: 'Baths',
  notebook: 'Notebook file',
  known: 'What is known',
  evening: 'An evening class',
  examples: 'Three jobs, planned',
  examplesHint: 'Invented examples. Open one to see its plan, how each figure came about, and its cautions.',
  noScript: 'This page needs JavaScript to start a job. The examples, Help and What to wear work without.',
  fromSheet: 'From a sheet: type its code',
  fromSheetLabel: 'Code on the sheet',
  fromSheetHint:
    'Eight letters, such as 7K2M-9QXA; they work in the notebook that printed them. Anywhere else, paste what the QR code says.',
  fromSheetLook: 'Look it up',
  compare: 'Two jobs side by side',
  bench: 'What your jobs have shown',
  year: 'A year on one page',
  find: 'Find a job: metal, salt, depth, date or any word',
  foundOf: (found: number, all: number): string => `${String(found)} of ${String(all)} jobs.`,
  more: (left: number): string => `Show more, ${String(left)} left`,
  jobs: 'Jobs in this browser',
  checking: 'Checking saved jobs.',
  delete: 'Delete',
  deleteOne: (title: string): string => `Delete “${title}”`,
  deleted: (title: string): string => `“${title}” is deleted.`,
  undo: 'Undo',
  notStarted: (why: string): string => `Not started: ${why}`,
  notFound: (why: string): string => `Not looked up: ${why}`,
  notDeleted: (why: string): string => `Not deleted: ${why}`,
  notUndone: (why: string): string => `Not put back: ${why}`,
  none: 'No job in this browser yet.',
  running: 'Is the supply off?',
  runningHint: 'This job’s clock was on. Look at the supply first, then open the job.',
} as const;

/** What the browser lacks, and what to do about it. */
export const standingTexts = {
  insecure:
    'Plain http: nothing is kept for use offline, and the screen cannot be kept on. Set your phone’s screen to stay on, or use an https address.',
  noStorage:
    'Jobs cannot be saved here: this browser allows no storage, as in some private windows. Open an ordinary window.',
  notPersisted:
    'The browser may clear jobs it thinks unused: Safari after seven days without a visit. Save a notebook file now and then.',
  offline: 'Works without a network.',
  notYet: 'Getting ready to work without a network.',
} as const;

/** "today 10:42", "yesterday 16:05" or "3 Nov 2026", by the reader's own calendar. */
export function whenTouched(at: number, now: number): string {
  const dayOf = (date: Date): number =>
    new Date(date.getFullYear(), date.getMonth(), date.getDate()).getTime();
  const days = Math.round((dayOf(new Date(now)) - dayOf(new Date(at))) / 86_400_000);
  if (days === 0) return `today ${clockTime(at)}`;
  if (days === 1) return `yesterday ${clockTime(at)}`;
  return dayText(at);
}

/**
 * Texts around the plan on the start page. Kept here because the plan's own texts are larger than the page.
 */
export const summaryTexts = {
  steps: 'Steps and safety messages',
  figures: (count: number): string => `Every figure, ${String(count)} of them`,
  start: 'Start from this',
  file: 'The job file',
} as const;
