import { sha256Of } from './sha256.ts';

/*
 * The notebook file is text with one record a line, each with the SHA-256 of its JSON, and a last line that
 * counts them. So it can be read piece by piece, and one changed letter refuses the whole file. Pictures are
 * named by their own hash. A single JSON value was simpler, but failed at a few hundred pictures; that
 * version 1 is still read. The file is text and not `.json` because phones can share text.
 */

/**
 * Version of the notebook file. Its first line says what the file is, the last how many records came before.
 * Version 1 was one JSON value without hashes.
 */
export const fileVersion = 2;

export const lineKinds = ['head', 'job', 'bath', 'preferences', 'photo', 'end'] as const;
export type LineKind = (typeof lineKinds)[number];

/** Why a file is refused. */
export interface BadFile {
  readonly found: string;
  readonly expected: string;
}

/** A line of a file in UTF-8, without its line end. */
export type Bytes = Uint8Array<ArrayBuffer>;

const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true });
/** Decodes text that is only needed to recognise its kind. */
const loose = new TextDecoder();

/** @param text JSON of the record */
export async function lineOf(kind: LineKind, text: string): Promise<Bytes> {
  const body = encoder.encode(text);
  const head = encoder.encode(`{"sha256":"${await sha256Of(body)}","${kind}":`);
  const line = new Uint8Array(head.length + body.length + 1);
  line.set(head);
  line.set(body, head.length);
  line[line.length - 1] = CLOSE;
  return line;
}

const CLOSE = 0x7d;
const HEAD = /^\{"sha256":"([0-9a-f]{64})","([a-z]+)":/;
/** The longest head of a line, bytes. */
const LONGEST_HEAD = 120;

/** The head of a line: what kind of record it holds. Null when the line has another form. */
export function headOf(
  line: Bytes,
): { readonly hash: string; readonly kind: string; readonly size: number } | null {
  const [whole = '', hash, kind] = HEAD.exec(loose.decode(line.subarray(0, LONGEST_HEAD))) ?? [];
  return hash === undefined || kind === undefined || line.at(-1) !== CLOSE
    ? null
    : { hash, kind, size: whole.length };
}

/** One line of a file, read. */
export interface FileLine {
  readonly kind: LineKind;
  /** its JSON, and the parsed value */
  readonly text: string;
  readonly value: unknown;
}

/** @param number of the line, from 1 */
export async function readLine(line: Bytes, number: number): Promise<FileLine | BadFile> {
  const place = `line ${String(number)}`;
  const head = headOf(line);
  if (head === null) {
    return { found: `${place} of another shape`, expected: `${place}: a record with its hash` };
  }
  const body = line.subarray(head.size, -1);
  if ((await sha256Of(body)) !== head.hash) {
    return {
      found: `${place} changed on its way: its content and its hash differ`,
      expected: 'the file as it was saved; save or send it again',
    };
  }
  const kind = lineKinds.find((one) => one === head.kind);
  if (kind === undefined) {
    return { found: `${place}: ${head.kind}`, expected: `${place}: one of ${lineKinds.join(', ')}` };
  }
  try {
    const text = decoder.decode(body);
    return { kind, text, value: JSON.parse(text) as unknown };
  } catch {
    return { found: `${place} without JSON`, expected: `${place}: JSON` };
  }
}

export const isBadFile = (read: object): read is BadFile => 'found' in read;
