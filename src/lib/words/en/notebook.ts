import { count } from './locale.ts';

/** What the notebook page says. */
export const notebookTexts = {
  title: 'Notebook file',
  lead: 'One file holds all jobs, pictures, baths and preferences of this browser. It moves them to another phone, and it is your copy if the browser clears its storage.',
  save: 'Save as a file',
  csv: 'For a spreadsheet',
  csvHint: 'Two tables, to read only: they cannot be taken in again.',
  csvJobs: 'Save all jobs as CSV',
  csvReadings: 'Save all readings as CSV',
  take: 'Take in a file',
  takeHint: 'Nothing is written until you have seen what the file would do.',
  choose: 'Choose a notebook file',
  nothingNew: 'Everything in the file is here already. Nothing to write.',
  write: 'Write to the notebook',
  leave: 'Leave it',
  safe: 'A job whose supply may be on is never written over: the file’s job then stands beside it.',
  unchecked: 'What the file’s jobs say was checked, nobody has checked here: it is asked again.',
  written: 'Written. Everything is in the notebook.',
} as const;

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
  theirs: { label: 'Take theirs', hint: 'The file’s replace mine.' },
  both: { label: 'Keep both', hint: 'The file’s stand beside mine, marked “from file”.' },
} as const;

export const savedText = (jobs: number, baths: number, name: string): string =>
  `Saved ${count(jobs, 'job')} and ${count(baths, 'bath')} as ${name}. Look for it among your downloads.`;

/** Said when the records are in, and some pictures are not. */
export const photosMissing = (left: number, why: string): string =>
  `Everything is in, but for ${count(left, 'picture')}${why === '' ? '' : ` (${why})`}. Take the same file in again for them; nothing else will be written twice.`;

export const badFileText = (found: string, expected: string): string =>
  `Not taken. Found: ${found}. Expected: ${expected}.`;
