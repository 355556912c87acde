import { version } from '$app/environment';
import { stepIds } from '../core/rules/rule.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { JobRecord } from '../notebook/records.ts';
import { idOf, isUnreadable, connectNotebook, readJob } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { depthLine } from './depth-line.ts';
import { photoIdsIn } from './photo-ids.ts';
import { isPowered } from './powered.ts';

let opened: Promise<Notebook> | null = null;

/**
 * The notebook for pages that list and manage jobs. It is separate from `open.ts`, which loads the procedure
 * and the planner: the start page must open without them.
 */
export function openNotebook(): Promise<Notebook> {
  const forget = (): void => {
    opened = null;
  };
  opened ??= connectNotebook(forget);
  opened.catch(forget);
  return opened;
}

/** One job in the list. */
export interface JobLine {
  readonly id: string;
  readonly title: string;
  readonly metal: string;
  readonly salt: string;
  /** as typed, with its unit: "0.1 mm" */
  readonly depth: string;
  readonly note: string;
  readonly step: StepId;
  readonly touchedAt: number;
  /** whether its supply may be on */
  readonly powered: boolean;
}

/** A record that cannot be read. It is kept unchanged. */
export interface Unread {
  readonly id: string;
  readonly why: string;
}

export interface JobsHere {
  readonly jobs: readonly JobLine[];
  readonly unreadable: readonly Unread[];
}

/** The step of a stored procedure; the first step when it has never run. */
function stepOf({ snapshot }: JobRecord): StepId {
  const value =
    typeof snapshot === 'object' && snapshot !== null && 'value' in snapshot ? snapshot.value : 'metal';
  const name = typeof value === 'object' && value !== null ? Object.keys(value)[0] : value;
  return stepIds.find((step) => step === name) ?? 'metal';
}

export const lineOf = (record: JobRecord): JobLine => ({
  id: record.id,
  title: record.draft['title'] ?? '',
  metal: record.draft['piece.metal'] ?? '',
  salt: record.draft['bath.salt'] ?? '',
  depth: depthLine(record.draft),
  note: record.result?.note ?? '',
  step: stepOf(record),
  touchedAt: record.updatedAt,
  powered: isPowered(record),
});

/** Jobs that may be powered first, then the last changed. */
export const inOrder = (lines: readonly JobLine[]): readonly JobLine[] =>
  lines.toSorted((a, b) => Number(b.powered) - Number(a.powered) || b.touchedAt - a.touchedAt);

interface Listed {
  readonly line: JobLine | Unread;
  /** ids of the pictures that it shows */
  readonly photos: readonly string[];
}

function listed(raw: unknown): Listed {
  const record = readJob(raw);
  const photos = photoIdsIn(raw);
  return isUnreadable(record)
    ? { line: { id: idOf(raw), why: record.why }, photos }
    : { line: lineOf(record), photos };
}

const isUnread = (line: JobLine | Unread): line is Unread => 'why' in line;

const listIn = async (book: Notebook): Promise<readonly Listed[]> => [
  ...(await book.derived('line', listed, version)).values(),
];

export async function jobsHere(): Promise<JobsHere> {
  const lines = (await listIn(await openNotebook())).map(({ line }) => line);
  return {
    jobs: inOrder(lines.filter((line): line is JobLine => !isUnread(line))),
    unreadable: lines.filter(isUnread),
  };
}

/** Deletes pictures that no job shows any more. */
export async function dropLostPhotos(): Promise<void> {
  const book = await openNotebook();
  const ids = await book.photoIds();
  if (ids.length === 0) return;
  const all = await listIn(book);
  // a job that cannot be read may refer to pictures in an unknown way
  if (all.some(({ line }) => isUnread(line))) return;
  const shown = new Set(all.flatMap(({ photos }) => photos));
  for (const id of ids) if (!shown.has(id)) await book.deletePhoto(id);
}

/**
 * Deletes a job.
 * @returns a function that restores it; null when the job does not exist, or its supply may be on
 */
export async function deleteJob(id: string): Promise<(() => Promise<void>) | null> {
  const book = await openNotebook();
  const record = await book.job(id);
  if (record === null || 'raw' in record || isPowered(record)) return null;
  await book.deleteJob(id);
  return () => book.saveJob(record, 'strict');
}
