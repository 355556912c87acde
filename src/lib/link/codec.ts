import { BadBits } from './bits.ts';
import type { BitReader, BitWriter } from './bits.ts';

/** One definition for both ways, so that what is read cannot drift from what is written. */
export interface Codec<T> {
  readonly put: (out: BitWriter, value: T) => void;
  /** @throws BadBits when the bits say nothing that was ever written */
  readonly take: (from: BitReader) => T;
}

/** Zero or more, to six digits. */
export const number: Codec<number> = {
  put: (out, value) => {
    out.putNumber(value);
  },
  take: (from) => from.takeNumber(),
};

/** Below zero as well. */
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
 * One word of a list, by its number.
 * @param numbers each word's own; once given, never another's
 * @param width bits, with room for words to come
 */
export function word<T extends string>(numbers: Readonly<Record<T, number>>, width: number): Codec<T> {
  const words = new Map(Object.entries<number>(numbers).map(([name, n]) => [n, name as T]));
  return {
    put: (out, value) => {
      if (!Object.hasOwn(numbers, value)) throw new RangeError(`found ${value}, which has no number`);
      out.put(numbers[value], width);
    },
    take: (from) => {
      const n = from.take(width);
      const found = words.get(n);
      if (found === undefined) throw new BadBits(`no word has the number ${n}`);
      return found;
    },
  };
}

/** A value, or null. */
export const perhaps = <T>(inner: Codec<T>): Codec<T | null> => ({
  put: (out, value) => {
    out.put(value === null ? 0 : 1, 1);
    if (value !== null) inner.put(out, value);
  },
  take: (from) => (from.take(1) === 1 ? inner.take(from) : null),
});

/** Fields in the order they are named. */
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

/** At most fifteen of a kind. */
export const few = <T>(inner: Codec<T>): Codec<readonly T[]> => ({
  put: (out, values) => {
    if (values.length > 15) throw new RangeError(`found ${values.length}, expected at most 15`);
    out.put(values.length, 4);
    for (const value of values) inner.put(out, value);
  },
  take: (from) => Array.from({ length: from.take(4) }, () => inner.take(from)),
});
