import type { Bytes } from './file-format.ts';

/** Longest line of this app's files, bytes. */
export const LONGEST_LINE = 4_000_000;

/** Longest line in version 1, where the whole notebook was one line, bytes. */
export const LONGEST_AT_ONCE = 20_000_000;

/** Thrown for a line longer than any record. */
export class TooLong extends Error {}

const NEW_LINE = 0x0a;
const RETURN = 0x0d;

function joined(parts: readonly Bytes[]): Bytes {
  const [only] = parts;
  if (parts.length === 1 && only) return only;
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const trimmed = (line: Bytes): Bytes => (line.at(-1) === RETURN ? line.subarray(0, -1) : line);

/**
 * The lines of a file, read piece by piece: a notebook with pictures is too large for memory.
 * @throws TooLong for a line longer than any record
 */
export async function* linesOf(file: Blob): AsyncGenerator<Bytes, void> {
  const reader = file.stream().getReader();
  /** pieces of the line that has not ended yet */
  let begun: Bytes[] = [];
  let length = 0;
  let isFirst = true;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    let from = 0;
    for (;;) {
      const end = value.indexOf(NEW_LINE, from);
      const part = value.subarray(from, end < 0 ? value.length : end);
      length += part.length;
      if (length > (isFirst ? LONGEST_AT_ONCE : LONGEST_LINE)) throw new TooLong();
      begun.push(part);
      if (end < 0) break;
      yield trimmed(joined(begun));
      begun = [];
      length = 0;
      isFirst = false;
      from = end + 1;
    }
  }
  if (length > 0) yield trimmed(joined(begun));
}
