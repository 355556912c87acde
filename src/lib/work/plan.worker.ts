import { planDraft } from './plan-draft.ts';
import type { Files, Planned } from './plan-draft.ts';

export interface Question {
  readonly id: number;
  readonly files: Files;
}

export type Reply = { readonly id: number } & (
  { readonly ok: true; readonly planned: Planned } | { readonly ok: false; readonly error: string }
);

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  let reply: Reply;
  try {
    reply = { id: data.id, ok: true, planned: planDraft(data.files) };
  } catch (error) {
    reply = { id: data.id, ok: false, error: String(error) };
  }
  postMessage(reply);
});
