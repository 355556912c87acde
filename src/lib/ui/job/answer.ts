import type { Draft, FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** Stores several answers in the draft at once, and replans once. */
export function answer(session: JobSession, answers: Partial<Draft>): void {
  for (const [field, value] of Object.entries(answers)) session.set(field as FieldId, value);
  void session.settle();
}
