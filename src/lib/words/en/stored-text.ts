/**
 * The text of an id from storage. A job, bath or plan saved by another version may name a salt, a metal or a
 * line that this version does not know; then the id itself is shown. Nowhere else may a text be missing.
 */
export const storedText = <Id extends string>(texts: Readonly<Record<Id, string>>, stored: string): string =>
  Object.hasOwn(texts, stored) ? texts[stored as Id] : stored;
