import type { Component } from 'svelte';
import type { FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** Props that each question's component gets. */
export interface QuestionProps {
  readonly session: JobSession;
  /** What was wrong with a field at the last Continue. */
  readonly faultOf: (field: FieldId) => string | undefined;
}

/** One question, shown as one screen. */
export interface Question {
  readonly id: string;
  readonly title: string;
  /** Fields that must be valid before Continue goes on. */
  readonly fields: readonly FieldId[];
  readonly component: Component<QuestionProps>;
  /** Whether the question has anything to ask in this job; without it the question is always shown. */
  readonly when?: (session: JobSession) => boolean;
  /** Label of the main button; null where the component has its own button. */
  readonly action?: string | null;
}
