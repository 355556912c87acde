import { createContext } from 'svelte';
import type { FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** What a field needs to show itself: the job, and the faults found at the last Continue. */
export interface DraftContext {
  readonly session: JobSession;
  readonly faultOf: (field: FieldId) => string | undefined;
  /**
   * For a field that is no answer of the draft: reports by id whether its text can be read. Continue waits
   * for it.
   */
  readonly flag: (id: string, isFaulty: boolean) => void;
}

/** Set by the job page and read by its fields. */
export const [draftContext, setDraftContext] = createContext<DraftContext>();
