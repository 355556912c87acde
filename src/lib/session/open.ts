import { titleAgain, titleApart } from '$words/job-title.ts';
import { startPlanner } from '../work/planner.ts';
import { procedureVersion } from '../procedure/machine.ts';
import { jobVersion } from '../notebook/records.ts';
import type { JobRecord } from '../notebook/records.ts';
import { idsIn, isUnreadable, connectNotebook, TAKEN_IN } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { earlierOf } from './beside.ts';
import { ratesIn } from './bench-rates.ts';
import type { Earlier } from './beside.ts';
import { withoutBack } from './design-follows.ts';
import { blankDraft } from './draft.ts';
import { JobSession } from './job-session.svelte.ts';
import { newId } from './new-id.ts';
import { paperOfRegion } from './paper-size.ts';
import { preferredAnswers } from './preferences.ts';
import { summariesIn } from './job-summary.ts';

export const appVersion = __APP_VERSION__;

let opened: Promise<Notebook> | null = null;

/** The notebook of this browser. Each page opens it once. */
export const notebook = (): Promise<Notebook> =>
  (opened ??= connectNotebook(() => {
    opened = null;
  }));

/** A new job's record, from a blank draft or from another job's. */
export function newRecord(now: number, draft: Readonly<Record<string, string>> = blankDraft): JobRecord {
  return {
    version: jobVersion,
    id: newId(),
    createdAt: now,
    updatedAt: now,
    appVersion,
    draft: { ...draft },
    at: '',
    procedureVersion,
    snapshot: null,
    events: [],
    planAtStart: null,
    readings: [],
    result: null,
  };
}

/** Lets only one tab write a job, while others read. Resolves at once with whether this tab may write. */
function acquireWriteLock(id: string, steal: boolean): Promise<{ held: boolean; lost: Promise<void> }> {
  const never = new Promise<void>(() => undefined);
  if (!('locks' in navigator)) return Promise.resolve({ held: true, lost: never });
  return new Promise((resolve) => {
    const lost = navigator.locks.request(
      `etchwright-job-${id}`,
      steal ? { steal: true } : { ifAvailable: true },
      (lock) => {
        resolve({ held: lock !== null, lost: lock === null ? never : stolen });
        return lock === null ? undefined : never;
      },
    );
    const stolen = lost.then(
      () => undefined,
      () => undefined,
    );
  });
}

export interface OpenJob {
  readonly session: JobSession;
  /** resolves when another tab takes the job over */
  readonly lost: Promise<void>;
}

async function earlierIn(book: Notebook, id: string | undefined): Promise<Earlier | null> {
  const record = id === undefined ? null : await book.job(id);
  return record === null || isUnreadable(record) ? null : earlierOf(record);
}

/**
 * Opens a job in this tab.
 * @param steal take it over from another tab
 * @returns null when there is no such job
 */
export async function openJob(
  id: string,
  { steal = false } = {},
): Promise<OpenJob | { unreadable: string } | null> {
  const book = await notebook();
  const pen = await acquireWriteLock(id, steal);
  const record = await book.job(id);
  if (record === null) return null;
  if (isUnreadable(record)) return { unreadable: record.why };
  const session = new JobSession(record, {
    notebook: book,
    planner: startPlanner(),
    now: () => Date.now(),
    mayWrite: pen.held,
    earlier: await earlierIn(book, record.copyOf),
    rates: ratesIn(await summariesIn(book), id),
    isTakenIn: idsIn(await book.meta(TAKEN_IN)).includes(id),
  });
  await session.open();
  // the record on the disk must say first that nothing was checked here
  if (pen.held && session.trouble === null) await book.forgetTakenIn(id);
  return { session, lost: pen.lost };
}

/** The first question of a job once the workshop is known. */
const FIRST_IN_A_KNOWN_WORKSHOP = 'metal.which';
/** Fields that start empty, because only the maker can know the answer. */
const unchosen = { 'piece.metal': '', 'bath.salt': '', 'supply.kind': '', 'workshop.has': '' } as const;

const titlesIn = async (book: Notebook): Promise<ReadonlySet<string>> =>
  new Set((await summariesIn(book)).map(({ title }) => title));

const titleOf = (draft: Readonly<Record<string, string>>, copyOf: string | undefined, now: number): string =>
  copyOf === undefined ? (draft['title'] ?? '') : titleAgain(draft['title'] ?? '', now);

/**
 * Starts a job and returns its id.
 * @param draft answers to start with; if absent: blank answers, the region's paper and the kept preferences
 * @param copyOf id of the job whose answers they are
 */
export async function startJob(draft?: Readonly<Record<string, string>>, copyOf?: string): Promise<string> {
  const book = await notebook();
  const now = Date.now();
  const record = newRecord(now, {
    ...(draft
      ? withoutBack(draft)
      : {
          ...blankDraft,
          ...unchosen,
          paper: paperOfRegion(navigator.languages),
          ...(await preferredAnswers(book)),
        }),
    // a job from another one's answers is a job of its own, and is told apart from all that are here
    ...(draft ? { title: titleApart(titleOf(draft, copyOf, now), await titlesIn(book)) } : {}),
    // what is mixed is mixed for one job, and what is painted for one piece
    'bath.mixedAt': '',
    'resist.paintedAt': '',
  });
  const at =
    copyOf === undefined && record.draft['workshop.known'] === 'yes' ? FIRST_IN_A_KNOWN_WORKSHOP : '';
  await book.saveJob({ ...record, at, ...(copyOf === undefined ? {} : { copyOf }) }, 'strict');
  // absent on plain http
  if ('storage' in navigator) void navigator.storage.persist();
  return record.id;
}
