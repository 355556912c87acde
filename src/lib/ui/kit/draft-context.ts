import { createContext } from 'svelte';
import type { FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** What a field of a job needs to show itself: the job, and what was wrong at the last Continue. */
export interface DraftContext {
  readonly session: JobSession;
  readonly faultOf: (field: FieldId) => string | undefined;
}

/** The job page sets it; its fields read it. */
export const [draftContext, setDraftContext] = createContext<DraftContext>();
