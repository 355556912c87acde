import { fieldIdOf, fieldRows } from '../core/job/fields.ts';
import { parseJob } from '../core/plan/job-input.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { textIn } from '../link/address.ts';
import { readJobCode, jobCode } from '../link/job-code.ts';
import type { TextFault } from '../link/job-code.ts';
import { looksLikeCode, readShortCode, shortCode } from '../link/short-code.ts';
import type { JobRecord } from '../notebook/records.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { blankDraft, draftFrom, readingUnitsIn } from './draft.ts';
import type { Draft } from './draft.ts';
import { jobFileOf } from './job-file.ts';
import { draftOf } from './jobs-from-plan.ts';
import { paperOfRegion } from './paper-size.ts';
import { preferredAnswers } from './preferences.ts';

/** What a printed sheet leads to. */
export interface FromSheet {
  /** answers for a new job; none of its checks are done */
  readonly draft: Draft;
  readonly job: JobInput;
  /** the job of this notebook that printed the sheet */
  readonly here: { readonly id: string; readonly title: string } | null;
}

/**
 * Why a sheet leads nowhere: the text has a fault, the code is mistyped, or it belongs to another notebook.
 */
export type SheetFault = TextFault | 'mistyped' | 'not-here';

/** Key under which a printed code is stored with its settings, because the job may change after printing. */
const keyOf = (code: string): string => `sheet ${code}`;

interface Printed {
  readonly id: string;
  readonly text: string;
}

const isPrinted = (value: unknown): value is Printed =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  'text' in value &&
  typeof value.id === 'string' &&
  typeof value.text === 'string';

/** The settings text of a stored job as it is now, or null while it is incomplete. */
function textOf(record: JobRecord): string | null {
  const parsed = parseJob(jobFileOf(draftFrom(record.draft)), { areaLater: true });
  return 'job' in parsed ? jobCode(parsed.job) : null;
}

/** Answers that are the maker's own and are not taken from a sheet: title, place, paper, scale and units. */
const ownIn = (draft: Draft): Partial<Draft> =>
  Object.fromEntries(
    fieldRows.flatMap(([path, { own }]) => {
      const id = fieldIdOf(path);
      return own && id !== null ? [[id, draft[id]]] : [];
    }),
  );

/** Stores which job a printed code names. */
export const rememberCode = (book: Notebook, code: string, printed: Printed): Promise<void> =>
  book.saveMeta(keyOf(code), printed);

/** Answers from a job printed on this device, with the fields that only this notebook has. */
function fromRecord(record: JobRecord, text: string): FromSheet | null {
  const read = readJobCode(text);
  if ('fault' in read) return null;
  const stored = draftFrom(record.draft);
  // if the job has not changed since, take its whole draft, with bath and drawing; otherwise the settings as
  // printed
  const draft =
    textOf(record) === text
      ? // when its bath was mixed and its piece painted says nothing of the new ones
        { ...stored, 'bath.mixedAt': '', 'resist.paintedAt': '' }
      : { ...draftOf({ ...read.job, units: readingUnitsIn(stored) }), ...ownIn(stored) };
  return { draft, job: read.job, here: { id: record.id, title: stored.title } };
}

async function byCode(book: Notebook, code: string): Promise<FromSheet | null> {
  const printed = await book.meta(keyOf(code));
  if (isPrinted(printed)) {
    const record = await book.job(printed.id);
    if (record !== null && !isUnreadable(record)) return fromRecord(record, printed.text);
  }
  const { records } = await book.jobs();
  for (const record of records) {
    const text = textOf(record);
    if (text !== null && shortCode(text) === code) return fromRecord(record, text);
  }
  return null;
}

async function byText(book: Notebook, text: string): Promise<FromSheet | { readonly fault: SheetFault }> {
  const read = readJobCode(text);
  if ('fault' in read) return read;
  const draft = {
    ...draftOf(read.job),
    ...ownIn(blankDraft),
    title: read.job.title,
    paper: paperOfRegion(navigator.languages),
    ...(await preferredAnswers(book)),
  };
  return { draft, job: read.job, here: null };
}

/** Finds the job of a typed code, a pasted address or the text of a QR code. */
export async function fromSheet(
  book: Notebook,
  typed: string,
): Promise<FromSheet | { readonly fault: SheetFault }> {
  const text = textIn(typed);
  if (!looksLikeCode(text)) return byText(book, text);
  const code = readShortCode(text);
  if (code === null) return { fault: 'mistyped' };
  return (await byCode(book, code)) ?? { fault: 'not-here' };
}
