import type { Bytes } from './file-format.ts';

/** A line longer than this is no record of this app's, bytes. */
export const LONGEST_LINE = 4_000_000;

/** The first version of the file was one line as long as the notebook. */
export const LONGEST_AT_ONCE = 20_000_000;

/** A line is longer than any record. */
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
 * The lines of a file, read as they come: a notebook with pictures is too large to be held at once.
 * @throws TooLong for a line that no record is as long as
 */
export async function* linesOf(file: Blob): AsyncGenerator<Bytes, void> {
  const reader = file.stream().getReader();
  /** pieces of the line that is not ended yet */
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
