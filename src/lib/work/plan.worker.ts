import type { Alternative } from '../core/plan/alternatives.ts';
import { alternativesOf, planDraft } from './plan-draft.ts';
import type { Files, Planned } from './plan-draft.ts';

export interface Question {
  readonly id: number;
  readonly files: Files;
  /** the plan itself, or other ways to its depth */
  readonly asks: 'plan' | 'alternatives';
}

export type Reply = { readonly id: number } & (
  | { readonly ok: true; readonly planned: Planned }
  | { readonly ok: true; readonly alternatives: readonly Alternative[] }
  | { readonly ok: false; readonly error: string }
);

addEventListener('message', ({ data: { id, files, asks } }: MessageEvent<Question>) => {
  let reply: Reply;
  try {
    reply =
      asks === 'plan'
        ? { id, ok: true, planned: planDraft(files) }
        : { id, ok: true, alternatives: alternativesOf(files) };
  } catch (error) {
    reply = { id, ok: false, error: String(error) };
  }
  postMessage(reply);
});
