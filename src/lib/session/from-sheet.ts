import { fieldIdOf, fieldRows } from '../core/job/fields.ts';
import { parseJob } from '../core/plan/job-input.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { textIn } from '../link/address.ts';
import { readJobCode, jobCode } from '../link/job-code.ts';
import type { ReadCode, TextFault } from '../link/job-code.ts';
import type { Unchosen } from '../link/layout.ts';
import { looksLikeCode, readShortCode, shortCode } from '../link/short-code.ts';
import type { JobRecord } from '../notebook/records.ts';
import { isUnreadable } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import { blankDraft, draftFrom, readingUnitsIn } from './draft.ts';
import type { Draft } from './draft.ts';
import { jobFileOf, leftOpen } from './job-file.ts';
import { draftOf } from './jobs-from-plan.ts';
import { paperOfRegion } from './paper-size.ts';
import { preferredAnswers } from './preferences.ts';

/** What a printed sheet leads to. */
export interface FromSheet {
  /** answers for a new job; none of its checks are done */
  readonly draft: Draft;
  readonly job: JobInput;
  /** what the sheet leaves open: planned as usual, and still to be chosen */
  readonly unchosen: readonly Unchosen[];
  /** the job in this notebook that printed the sheet */
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

/** Settings text of a draft as it stands, or null while it is no whole job. */
function textOf(draft: Draft): string | null {
  const parsed = parseJob(jobFileOf(draft), { areaLater: true });
  return 'job' in parsed ? jobCode(parsed.job, leftOpen(draft)) : null;
}

/**
 * Whether papers with this text are this job's: as it stands, or as it stood before its bare metal was measured. A label
 * is printed when the bath is mixed, the sheet when the piece is masked: both lead to one job.
 */
const isOf = (draft: Draft, text: string): boolean =>
  textOf(draft) === text || textOf({ ...draft, 'piece.area': 'later' }) === text;

/** A job as it was printed, with what was left open then. */
const asPrinted = ({ job, unchosen }: ReadCode): Draft => ({
  ...draftOf(job),
  ...Object.fromEntries(unchosen.map((field) => [field, ''])),
});

/** What is the maker's own and not the sheet's: title, place, paper, scale and units. */
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
  // unchanged since: the whole draft, with bath and drawing; otherwise as printed
  const draft = isOf(stored, text)
    ? // when its bath was mixed and its piece painted says nothing of the new ones
      { ...stored, 'bath.mixedAt': '', 'resist.paintedAt': '' }
    : { ...asPrinted({ ...read, job: { ...read.job, units: readingUnitsIn(stored) } }), ...ownIn(stored) };
  return { draft, job: read.job, unchosen: read.unchosen, here: { id: record.id, title: stored.title } };
}

async function byCode(book: Notebook, code: string): Promise<FromSheet | null> {
  const printed = await book.meta(keyOf(code));
  if (isPrinted(printed)) {
    const record = await book.job(printed.id);
    if (record !== null && !isUnreadable(record)) return fromRecord(record, printed.text);
  }
  const { records } = await book.jobs();
  for (const record of records) {
    const text = textOf(draftFrom(record.draft));
    if (text !== null && shortCode(text) === code) return fromRecord(record, text);
  }
  return null;
}

async function byText(book: Notebook, text: string): Promise<FromSheet | { readonly fault: SheetFault }> {
  const read = readJobCode(text);
  if ('fault' in read) return read;
  const preferred = await preferredAnswers(book);
  const draft = {
    ...asPrinted(read),
    ...ownIn(blankDraft),
    title: read.job.title,
    paper: paperOfRegion(navigator.languages),
    // how the sheet's supply was set says nothing of the one in this workshop
    ...(preferred['supply.kind'] ? { 'supply.control': 'volts' } : {}),
    ...preferred,
  };
  return { draft, job: read.job, unchosen: read.unchosen, here: null };
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
