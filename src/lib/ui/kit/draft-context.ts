import { createContext } from 'svelte';
import type { FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** What a field of a job needs to show itself: the job, and what was wrong at the last Continue. */
export interface DraftContext {
  readonly session: JobSession;
  readonly faultOf: (field: FieldId) => string | undefined;
  /** A field that is no answer of the draft says by its id whether it can be read: Continue waits for it. */
  readonly flag: (id: string, isFaulty: boolean) => void;
}

/** The job page sets it; its fields read it. */
export const [draftContext, setDraftContext] = createContext<DraftContext>();
