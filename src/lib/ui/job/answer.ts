import type { Draft, FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** Puts several answers into the draft at once, and plans anew. */
export function answer(session: JobSession, answers: Partial<Draft>): void {
  for (const [field, value] of Object.entries(answers)) session.set(field as FieldId, value);
  void session.settle();
}
