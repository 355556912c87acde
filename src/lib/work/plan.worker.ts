import type { Alternative } from '../core/plan/alternatives.ts';
import type { Influence } from '../core/plan/influence.ts';
import type { AmmeterGain } from '../core/plan/questions.ts';
import type { Trial, Trying } from '../core/plan/what-if.ts';
import { mapFor } from './map-bite.ts';
import { alternativesOf, ammeterGainIn, influencesIn, planDraft, trialIn } from './plan-draft.ts';
import type { Files, Planned } from './plan-draft.ts';

export interface WorkerRequest {
  readonly id: number;
  readonly files: Files;
  /** the plan itself, other ways to its depth, what an ammeter would change, what moves it, or what another value would make of it */
  readonly asks: 'plan' | 'alternatives' | 'ammeter' | 'influences' | Trying;
}

export type Reply = { readonly id: number } & (
  | { readonly ok: true; readonly planned: Planned }
  | { readonly ok: true; readonly alternatives: readonly Alternative[] }
  | { readonly ok: true; readonly gain: AmmeterGain | null }
  | { readonly ok: true; readonly influences: readonly Influence[] }
  | { readonly ok: true; readonly trial: Trial | null }
  | { readonly ok: false; readonly error: string }
);

/** Question for the bite map. Its worker does nothing else. */
export interface MapQuestion {
  readonly asks: 'map';
  readonly file: unknown;
}

addEventListener('message', ({ data }: MessageEvent<WorkerRequest | MapQuestion>) => {
  if (data.asks === 'map') {
    mapFor(data.file, (one) => {
      postMessage(one);
    });
    return;
  }
  const { id, files, asks } = data;
  let reply: Reply;
  try {
    if (asks === 'plan') reply = { id, ok: true, planned: planDraft(files) };
    else if (asks === 'alternatives') reply = { id, ok: true, alternatives: alternativesOf(files) };
    else if (asks === 'ammeter') reply = { id, ok: true, gain: ammeterGainIn(files) };
    else if (asks === 'influences') reply = { id, ok: true, influences: influencesIn(files) };
    else reply = { id, ok: true, trial: trialIn(files, asks) };
  } catch (error) {
    reply = { id, ok: false, error: String(error) };
  }
  postMessage(reply);
});
