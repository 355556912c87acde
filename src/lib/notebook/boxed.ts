/*
 * A job lies in the store as one text, copied and written several times faster than its thousands of parts;
 * the short facts of all jobs lie on one sheet, and every write leaves a mark for what is no longer true.
 */

/**
 * A job as it lies in the store: its JSON as one text. A plan has thousands of small parts, and a browser copies and
 * writes one text several times faster than them.
 */
export interface Boxed {
  readonly id: string;
  readonly text: string;
}

export const boxed = (record: { readonly id: string }): Boxed => ({
  id: record.id,
  text: JSON.stringify(record),
});

export const isBoxed = (stored: unknown): stored is Boxed =>
  typeof stored === 'object' &&
  stored !== null &&
  'text' in stored &&
  typeof stored.text === 'string' &&
  Object.keys(stored).length === 2;

/** What lies in the store, taken out; jobs were once stored as they are. */
export function unboxed(stored: unknown): unknown {
  if (!isBoxed(stored)) return stored;
  try {
    return JSON.parse(stored.text) as unknown;
  } catch {
    return stored;
  }
}

/** Its JSON, without taking it apart. */
export const textOf = (stored: unknown): string => (isBoxed(stored) ? stored.text : JSON.stringify(stored));
