import { preferences, preferencesVersion } from '../notebook/records.ts';
import { sequences } from '../notebook/migrations.ts';
import { PREFERENCES, isUnreadable, readRecord } from '../notebook/store.ts';
import type { Preferences } from '../notebook/records.ts';
import type { Notebook } from '../notebook/store.ts';
import { blankDraft } from './draft.ts';
import type { Draft, FieldId } from './draft.ts';
import { supplyFields, withSupply } from './supplies.ts';

/** Answers asked in the first job and only shown in later ones. */
const kept = {
  use: 'place.use',
  country: 'place.country',
  room: 'place.room',
  paper: 'paper',
} as const satisfies Record<string, FieldId>;

/**
 * Answers about the workshop. They are kept as one record, because the fields of a supply belong together.
 */
const workshop = [
  'workshop.known',
  'workshop.supply',
  'workshop.has',
  'place.openings',
  ...supplyFields,
  'scale',
] as const satisfies readonly FieldId[];

const keptFields: ReadonlySet<FieldId> = new Set([...Object.values(kept), ...workshop]);
const isOfWorkshop = (field: string): boolean => workshop.some((one) => one === field);

export const isPreference = (field: FieldId): boolean => keptFields.has(field);

/** The stored preferences; null in a new browser, or when they cannot be read. */
export async function keptPreferences(book: Notebook): Promise<Preferences | null> {
  const raw = await book.meta(PREFERENCES);
  if (raw === undefined) return null;
  const read = readRecord(preferences, raw, sequences.preferences);
  return isUnreadable(read) ? null : read;
}

/** The answers kept from earlier jobs. */
export async function preferredAnswers(book: Notebook): Promise<Partial<Draft>> {
  const all = await keptPreferences(book);
  if (all === null) return {};
  const { use, country, paper, room } = all;
  return {
    ...Object.fromEntries(Object.entries(all.workshop ?? {}).filter(([field]) => isOfWorkshop(field))),
    [kept.use]: use,
    [kept.country]: country,
    [kept.paper]: paper,
    ...(room === undefined ? {} : { [kept.room]: room }),
  };
}

const blank: Preferences = {
  version: preferencesVersion,
  use: blankDraft[kept.use],
  country: blankDraft[kept.country],
  paper: blankDraft[kept.paper],
};

/** Changes some preferences and leaves the others. */
export async function changePreferences(
  book: Notebook,
  change: Partial<Omit<Preferences, 'version'>>,
): Promise<Preferences> {
  const after = { ...((await keptPreferences(book)) ?? blank), ...change };
  await book.saveMeta(PREFERENCES, after);
  return after;
}

/** Keeps a job's answers for the next one. */
export const keepPreferences = async (book: Notebook, draft: Draft): Promise<void> => {
  await changePreferences(book, {
    use: draft[kept.use],
    country: draft[kept.country],
    room: draft[kept.room],
    paper: draft[kept.paper],
    // a supply chosen for one job only does not become the workshop's
    ...(draft['workshop.known'] === 'yes'
      ? {
          workshop: Object.fromEntries(workshop.map((field) => [field, draft[field]])),
          supplies: withSupply((await keptPreferences(book))?.supplies ?? {}, draft),
        }
      : {}),
  });
};
