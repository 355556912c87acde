import type { Component } from 'svelte';
import type { FieldId } from '$lib/session/draft.ts';
import type { JobSession } from '$lib/session/job-session.svelte.ts';

/** What every question's component is given. */
export interface QuestionProps {
  readonly session: JobSession;
  /** what is wrong with a field since the last Continue */
  readonly faultOf: (field: FieldId) => string | undefined;
}

/** One screen: one question. */
export interface Question {
  readonly id: string;
  readonly title: string;
  /** fields that must parse before Continue goes on */
  readonly fields: readonly FieldId[];
  readonly component: Component<QuestionProps>;
  /** left out where it has nothing to ask; always there without */
  readonly when?: (session: JobSession) => boolean;
  /** words on the main button; null where the component has its own */
  readonly action?: string | null;
}
