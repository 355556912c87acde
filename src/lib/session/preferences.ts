import { preferences, recordVersion } from '../notebook/records.ts';
import { sequences } from '../notebook/migrations.ts';
import { PREFERENCES, isUnreadable, readRecord } from '../notebook/store.ts';
import type { Notebook } from '../notebook/store.ts';
import type { Draft, FieldId } from './draft.ts';

/** Asked in the first job, and only shown in the next ones. */
const kept = {
  use: 'place.use',
  country: 'place.country',
  room: 'place.room',
  paper: 'paper',
} as const satisfies Record<string, FieldId>;

const keptFields: ReadonlySet<FieldId> = new Set(Object.values(kept));

export const isPreference = (field: FieldId): boolean => keptFields.has(field);

/** The answers kept from earlier jobs; none in a new browser, or where they cannot be read. */
export async function preferredAnswers(book: Notebook): Promise<Partial<Draft>> {
  const raw = await book.meta(PREFERENCES);
  if (raw === undefined) return {};
  const read = readRecord(preferences, raw, sequences.preferences);
  if (isUnreadable(read)) return {};
  const { use, country, paper, room } = read;
  return {
    [kept.use]: use,
    [kept.country]: country,
    [kept.paper]: paper,
    ...(room === undefined ? {} : { [kept.room]: room }),
  };
}

/** Keeps them for the next job. */
export const keepPreferences = (book: Notebook, draft: Draft): Promise<void> =>
  book.saveMeta(PREFERENCES, {
    version: recordVersion,
    use: draft[kept.use],
    country: draft[kept.country],
    room: draft[kept.room],
    paper: draft[kept.paper],
  });
