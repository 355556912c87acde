/*
 * A job is stored as one text, because a browser copies and writes one text several times faster than
 * thousands of parts. Short facts about all jobs are kept together in one record, and every write marks those
 * that are no longer true.
 */

/** A job as it is stored: its JSON as one text. */
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

/** A stored job as an object. Jobs from early versions were stored without a box. */
export function unboxed(stored: unknown): unknown {
  if (!isBoxed(stored)) return stored;
  try {
    return JSON.parse(stored.text) as unknown;
  } catch {
    return stored;
  }
}

/** The JSON of a stored job, without parsing a boxed one. */
export const textOf = (stored: unknown): string => (isBoxed(stored) ? stored.text : JSON.stringify(stored));
