import { BadBits } from './bits.ts';
import type { BitReader, BitWriter } from './bits.ts';

/** Writing and reading are defined together, so that they cannot drift apart. */
export interface Codec<T> {
  readonly put: (out: BitWriter, value: T) => void;
  /** @throws BadBits for bits that no writer can have written */
  readonly take: (from: BitReader) => T;
}

/** Zero or more, to six digits. */
export const number: Codec<number> = {
  put: (out, value) => {
    out.putNumber(value);
  },
  take: (from) => from.takeNumber(),
};

/** A number that may be negative. */
export const signed: Codec<number> = {
  put: (out, value) => {
    out.put(value < 0 ? 1 : 0, 1);
    out.putNumber(Math.abs(value));
  },
  take: (from) => (from.take(1) === 1 ? -from.takeNumber() : from.takeNumber()),
};

export const flag: Codec<boolean> = {
  put: (out, value) => {
    out.put(value ? 1 : 0, 1);
  },
  take: (from) => from.take(1) === 1,
};

/**
 * One word of a list, by its place in it.
 * @param width bits, with room for words to come
 */
export const word = (words: readonly string[], width: number): Codec<string> => ({
  put: (out, value) => {
    const n = words.indexOf(value);
    if (n < 0) throw new RangeError(`found ${value}, which has no number`);
    out.put(n, width);
  },
  take: (from) => {
    const n = from.take(width);
    const found = words[n];
    if (found === undefined) throw new BadBits(`no word has the number ${n}`);
    return found;
  },
});

/**
 * One word of a list, or none: the last number of its width stands for what nobody has chosen, and no word may have it.
 */
export function wordOrNone(words: readonly string[], width: number): Codec<string> {
  const none = 2 ** width - 1;
  if (words.length > none) throw new RangeError(`${words.length} words found, at most ${none} expected`);
  const inner = word(words, width);
  return {
    put: (out, value) => {
      if (value === '') out.put(none, width);
      else inner.put(out, value);
    },
    take: (from) => {
      const n = from.take(width);
      if (n === none) return '';
      const found = words[n];
      if (found === undefined) throw new BadBits(`no word has the number ${n}`);
      return found;
    },
  };
}

/** A value that is handled as text. */
export const asText = <T>(
  inner: Codec<T>,
  valueOf: (text: string) => T,
  textOf: (value: T) => string,
): Codec<string> => ({
  put: (out, text) => {
    inner.put(out, valueOf(text));
  },
  take: (from) => textOf(inner.take(from)),
});

/** Fields in the order of their names in `parts`. */
export function fields<T extends object>(parts: { readonly [K in keyof T]: Codec<T[K]> }): Codec<T> {
  const names = Object.keys(parts) as (keyof T)[];
  return {
    put: (out, value) => {
      for (const name of names) parts[name].put(out, value[name]);
    },
    take: (from) => {
      const value: Partial<T> = {};
      for (const name of names) value[name] = parts[name].take(from);
      return value as T;
    },
  };
}

/** A list of at most fifteen values. */
export const few = <T>(inner: Codec<T>): Codec<readonly T[]> => ({
  put: (out, values) => {
    if (values.length > 15) throw new RangeError(`found ${values.length}, expected at most 15`);
    out.put(values.length, 4);
    for (const value of values) inner.put(out, value);
  },
  take: (from) => Array.from({ length: from.take(4) }, () => inner.take(from)),
});
