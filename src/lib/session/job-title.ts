import { ownTitle } from '$words/job-title.ts';
import type { Draft } from './draft.ts';

/** @param at when the job was begun, ms since 1970 */
export const ownTitleOf = (draft: Draft, at: number): string =>
  ownTitle(draft['piece.metal'], draft['piece.shape'], at);
