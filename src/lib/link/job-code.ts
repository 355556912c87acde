import { fileFrom } from '../core/job/draft.ts';
import type { Draft } from '../core/job/draft.ts';
import { defaultReadingUnits } from '../core/job/reading-units.ts';
import { plainDraft } from '../core/plan/job-draft.ts';
import type { JobInput } from '../core/plan/job-input.ts';
import { parseJob } from '../core/plan/job-input.ts';
import { BadBits, BitReader, BitWriter } from './bits.ts';
import { fnv1a64, folded } from '../core/units/fnv.ts';
import { layout, mayBeUnchosen } from './layout.ts';
import type { Unchosen } from './layout.ts';

/*
 * A printed code holds everything that the plan is made from, in some 45 letters. It has no title, place or
 * bath name, because sheets are handed round. Every word has a number that is never used again for another,
 * so that old sheets stay readable. A short code of eight letters cannot hold a job; it names one in the
 * notebook that printed it.
 */

/** First letter of every text: the version of the layout that follows. */
const VERSION = '1';
/** Bytes of the fingerprint at the end. */
const SEAL = 3;
/** No settings are longer than this; longer texts are not read. */
const MOST_LETTERS = 600;

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Why a text holds no settings: not from this app; from a later version; damaged; or no valid job. */
export type TextFault = 'foreign' | 'newer' | 'damaged' | 'no-job';

/** Base 64 with letters allowed in addresses, without padding (RFC 4648, section 5). */
function lettersOf(bytes: Uint8Array): string {
  const writer = new BitWriter();
  for (const byte of bytes) writer.put(byte, 8);
  writer.put(0, (6 - ((bytes.length * 8) % 6)) % 6);
  const reader = new BitReader(writer.bytes());
  return Array.from({ length: Math.ceil((bytes.length * 8) / 6) }, () =>
    ALPHABET.charAt(reader.take(6)),
  ).join('');
}

function bytesOf(letters: string): Uint8Array {
  const writer = new BitWriter();
  for (const letter of letters) writer.put(ALPHABET.indexOf(letter), 6);
  return writer.bytes().slice(0, Math.floor((letters.length * 6) / 8));
}

const sealOf = (content: Uint8Array): Uint8Array => {
  const seal = folded(fnv1a64(content), SEAL * 8);
  return Uint8Array.of(seal >> 16, (seal >> 8) & 0xff, seal & 0xff);
};

/** A job as a code has it. */
export interface ReadCode {
  readonly job: JobInput;
  readonly unchosen: readonly Unchosen[];
}

const unchosenIn = (draft: Draft): readonly Unchosen[] =>
  mayBeUnchosen.filter((field) => draft[field] === '');

function textOf(draft: Draft): string {
  const writer = new BitWriter();
  layout.put(writer, draft);
  const content = writer.bytes();
  return VERSION + lettersOf(Uint8Array.of(...content, ...sealOf(content)));
}

/**
 * A job's settings as a short text for an address or a QR code; equal settings give equal texts.
 * @param unchosen fields that nobody has chosen: a job file has a usual value for them, and the code says so
 */
export const jobCode = (job: JobInput, unchosen: readonly Unchosen[] = []): string =>
  textOf({
    ...plainDraft({ ...job, units: defaultReadingUnits }),
    ...Object.fromEntries(unchosen.map((field) => [field, ''])),
  });

/** The settings in a text, or why it holds none. */
function settingsIn(text: string): Draft | TextFault {
  const bytes = bytesOf(text.slice(1));
  const content = bytes.slice(0, Math.max(0, bytes.length - SEAL));
  const isSealed = sealOf(content).every((byte, i) => byte === bytes[content.length + i]);
  if (!isSealed) return 'damaged';
  try {
    const draft = layout.take(new BitReader(content));
    // each job has exactly one text: one that differs was not written by this app
    return textOf(draft) === text ? draft : 'damaged';
  } catch (error) {
    if (error instanceof BadBits || error instanceof RangeError) return 'damaged';
    throw error;
  }
}

/**
 * Reads settings from outside. Nothing in them is trusted: they are checked as a job file is.
 * @returns the job, as if its file had been typed; or why there is none
 */
export function readJobCode(text: string): ReadCode | { readonly fault: TextFault } {
  if (text.length < 2 || text.length > MOST_LETTERS || !/^[\w-]+$/.test(text)) return { fault: 'foreign' };
  if (/^[2-9]/.test(text)) return { fault: 'newer' };
  if (!text.startsWith(VERSION)) return { fault: 'foreign' };
  const draft = settingsIn(text);
  if (typeof draft === 'string') return { fault: draft };
  // planned as a job file without them is; what was left open stays said
  const parsed = parseJob(fileFrom(draft), { areaLater: true });
  return 'job' in parsed ? { job: parsed.job, unchosen: unchosenIn(draft) } : { fault: 'no-job' };
}
