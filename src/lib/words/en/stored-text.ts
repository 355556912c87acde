/**
 * The text of an id that comes out of storage: a job, a bath or a plan of another version may name a salt, a metal or a
 * line that this one does not know, and then its id stands as it is. The only place where a text may be missing.
 */
export const storedText = <Id extends string>(texts: Readonly<Record<Id, string>>, stored: string): string =>
  Object.hasOwn(texts, stored) ? texts[stored as Id] : stored;
