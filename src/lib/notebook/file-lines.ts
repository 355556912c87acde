/** A line longer than this is no record of this app's, characters. */
export const LONGEST_LINE = 4_000_000;

/** What a line that is too long is cut to: enough to tell that it was. */
export class TooLong extends Error {}

/**
 * The lines of a file, read as they come: a notebook with pictures is too large to be held as one text.
 * @throws TooLong for a line beyond `LONGEST_LINE`; TypeError for what is no UTF-8
 */
export async function* linesOf(file: Blob): AsyncGenerator<string, void> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const reader = file.stream().getReader();
  /** pieces of the line that is not ended yet */
  let begun: string[] = [];
  let length = 0;
  const ended = (): string => {
    const line = begun.join('').replace(/\r$/, '');
    begun = [];
    length = 0;
    return line;
  };
  for (;;) {
    const { done, value } = await reader.read();
    const parts = (done ? decoder.decode() : decoder.decode(value, { stream: true })).split('\n');
    for (const [n, part] of parts.entries()) {
      if (n > 0) yield ended();
      begun.push(part);
      length += part.length;
      if (length > LONGEST_LINE) throw new TooLong();
    }
    if (done) break;
  }
  const last = ended();
  if (last !== '') yield last;
}
