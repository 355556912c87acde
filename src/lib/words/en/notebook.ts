import { count } from './locale.ts';
import { dayAndClockText } from './times.ts';

/** Texts of the notebook page. */
export const notebookTexts = {
  title: 'Notebook file',
  lead: 'One file holds every job, picture, bath and preference of this browser. Use it to move to another phone, and as your copy if the browser clears its storage.',
  save: 'Save as a file',
  csv: 'For a spreadsheet',
  csvHint: 'Two tables to read: they cannot be loaded back.',
  csvJobs: 'Save all jobs as CSV',
  csvReadings: 'Save all readings as CSV',
  load: 'Load a notebook file',
  loadHint: 'You see what the file would change before anything is written.',
  choose: 'Choose a notebook file',
  nothingNew: 'Everything in the file is here already. Nothing to write.',
  write: 'Write to the notebook',
  cancel: 'Cancel',
  safe: 'A job whose supply may be on is never overwritten: the file’s job is put beside it.',
  unchecked: 'Checks do not come with the file: each job asks for them again.',
  written: 'Written. Everything is in the notebook.',
  preview: 'What the file would change',
  pictures: 'pictures',
  leftOut: 'left out',
  leftOutWhy: (count: number): string => `${String(count)}: cannot be read, or their place is taken`,
  chooseFirst: 'Choose for each conflict first.',
} as const;

/** Records that this version cannot read. */
export const unreadableTexts = {
  title: 'Cannot be read here',
  hint: 'They are kept as they are and saved in every notebook file. A newer version of the app may read them.',
  nameless: 'without a name',
  short: 'cannot be read here',
  kept: (count: number): string => `${String(count)}, kept as they are`,
} as const;

/** Where a file came from. */
export const fileOrigin = (savedAt: number, version: string): string =>
  `Saved ${dayAndClockText(savedAt)} by version ${version}. Nothing is written yet.`;

export const kindNames = { jobs: 'jobs', baths: 'baths', preferences: 'preferences' } as const;
export type Kind = keyof typeof kindNames;

/** "3 new, 1 the same, 1 conflict" */
export function countText(fresh: number, same: number, conflicts: number): string {
  return [
    `${fresh} new`,
    ...(same > 0 ? [`${same} the same`] : []),
    ...(conflicts > 0 ? [count(conflicts, 'conflict')] : []),
  ].join(', ');
}

export const choiceWords = {
  mine: { label: 'Keep mine', hint: 'The file’s are left out.' },
  theirs: { label: 'Use the file’s', hint: 'They replace mine.' },
  both: { label: 'Keep both', hint: 'The file’s are added, marked “from file”.' },
} as const;

export const conflictsAmong = (kind: Kind): string => `Conflicts among ${kindNames[kind]}`;

/** “Pendant”, “Cuff” */
export const quotedNames = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(', ');

export const savedText = (jobs: number, baths: number, name: string): string =>
  `Saved ${count(jobs, 'job')} and ${count(baths, 'bath')} as ${name}. Look for it among your downloads.`;

/** Said when the records were taken in but some pictures are missing. */
export const photosMissing = (left: number, why: string): string =>
  `Everything is written except ${count(left, 'picture')}${why === '' ? '' : ` (${why})`}. Load the same file again for them; nothing else is written twice.`;

export const badFileText = (found: string, expected: string): string =>
  `Not loaded. Found: ${found}. Expected: ${expected}.`;
