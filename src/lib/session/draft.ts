import { blankDraft } from '../core/job/draft.ts';
import type { Draft } from '../core/job/draft.ts';
import { defaultReadingUnits, lengthUnits, temperatureUnits } from '../core/job/reading-units.ts';
import type { ReadingUnits } from '../core/job/reading-units.ts';

/**
 * A stored draft is texts by field. A field that this version does not know comes from a later one: it stays in the
 * draft as it is, so that it is there again when that version opens the record, no plan is made with it, and the job's
 * page names it. In a job file, where nobody would see that it was left out, an unknown field is a fault.
 */
export { blankDraft };
export type { Draft };
export type { FieldId } from '../core/job/fields.ts';

/** A draft from storage: missing fields blank, unknown ones as they are. */
export const draftFrom = (stored: Readonly<Record<string, string>>): Draft => ({ ...blankDraft, ...stored });

/** Fields of a draft that this version does not know. */
export const unknownFields = (draft: Draft): readonly string[] =>
  Object.keys(draft).filter((field) => !Object.hasOwn(blankDraft, field));

/** How the maker reads lengths and temperatures; what this version does not know is read as the blank draft has it. */
export const readingUnitsIn = (draft: Draft): ReadingUnits => ({
  length: lengthUnits.find((unit) => unit === draft['unit.length']) ?? defaultReadingUnits.length,
  temperature:
    temperatureUnits.find((unit) => unit === draft['unit.temperature']) ?? defaultReadingUnits.temperature,
});
