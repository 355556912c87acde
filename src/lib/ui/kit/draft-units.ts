import { unitIn as typedIn } from '$lib/core/job/draft.ts';
import { jobFields, pathOfField } from '$lib/core/job/fields.ts';
import type { Draft, FieldId } from '$lib/session/draft.ts';
import { storedSymbol } from '$words/units.ts';

/** Symbol of the unit in which a field of this draft is typed. */
export const unitIn = (field: FieldId, draft: Draft): string =>
  storedSymbol(typedIn(jobFields[pathOfField(field)], draft));
