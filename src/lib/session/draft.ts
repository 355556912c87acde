import { blankDraft } from '../core/job/draft.ts';
import type { Draft } from '../core/job/draft.ts';
import { defaultReadingUnits, lengthUnits, temperatureUnits } from '../core/job/reading-units.ts';
import type { ReadingUnits } from '../core/job/reading-units.ts';

/**
 * A stored draft is texts by field. A field that this version does not know comes from a later version. It
 * stays in the draft unchanged, so that the later version finds it again; it has no effect on the plan, and
 * the job's page names it. In a job file an unknown field is an error, because nobody would notice that it
 * was ignored.
 */
export { blankDraft };
export type { Draft };
export type { FieldId } from '../core/job/fields.ts';

/** A draft from storage: missing fields get their defaults, unknown ones stay. */
export const draftFrom = (stored: Readonly<Record<string, string>>): Draft => ({ ...blankDraft, ...stored });

/** Fields of a draft that this version does not know. */
export const unknownFields = (draft: Draft): readonly string[] =>
  Object.keys(draft).filter((field) => !Object.hasOwn(blankDraft, field));

/** The units in which the maker reads lengths and temperatures. Unknown values become the defaults. */
export const readingUnitsIn = (draft: Draft): ReadingUnits => ({
  length: lengthUnits.find((unit) => unit === draft['unit.length']) ?? defaultReadingUnits.length,
  temperature:
    temperatureUnits.find((unit) => unit === draft['unit.temperature']) ?? defaultReadingUnits.temperature,
});
