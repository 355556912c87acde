import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * The one file that holds a whole notebook: text, a record a line, each with the SHA-256 of its JSON. The first line
 * says what it is, the last how many records came before. Version 1 was one JSON value without hashes.
 */
export const fileVersion = 2;

export const lineKinds = ['head', 'job', 'bath', 'preferences', 'photo', 'end'] as const;
export type LineKind = (typeof lineKinds)[number];

/** How many records of each kind a file holds. */
export interface Counts {
  readonly jobs: number;
  readonly baths: number;
  readonly photos: number;
}

/** Why a file is not taken. */
export interface BadFile {
  readonly found: string;
  readonly expected: string;
}

const hashOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** A line of the file, its end included. */
export function lineOf(kind: LineKind, value: unknown): string {
  const text = JSON.stringify(value);
  return `{"sha256":"${hashOf(text)}","${kind}":${text}}\n`;
}

const LINE = /^\{"sha256":"([0-9a-f]{64})","([a-z]+)":(.*)\}$/s;

/** Whether a text begins as the first line does. */
export const beginsAsLines = (text: string): boolean => text.startsWith('{"sha256":"');

/** One line as written. */
export interface Line {
  readonly kind: LineKind;
  readonly value: unknown;
}

/** @param number of the line, from 1 */
export function readLine(line: string, number: number): Line | BadFile {
  const [, hash, kind, text] = LINE.exec(line) ?? [];
  const place = `line ${String(number)}`;
  if (hash === undefined || text === undefined) {
    return { found: `${place} of another shape`, expected: `${place}: a record with its hash` };
  }
  if (hashOf(text) !== hash) {
    return {
      found: `${place} changed on its way: its content and its hash differ`,
      expected: 'the file as it was saved; save or send it again',
    };
  }
  const known = lineKinds.find((one) => one === kind);
  if (known === undefined) {
    return { found: `${place}: ${String(kind)}`, expected: `${place}: one of ${lineKinds.join(', ')}` };
  }
  try {
    return { kind: known, value: JSON.parse(text) as unknown };
  } catch {
    return { found: `${place} without JSON`, expected: `${place}: JSON` };
  }
}

export const isBadFile = (read: object): read is BadFile => 'found' in read;
