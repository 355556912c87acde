import { biteMap } from '../core/cell/bite-map.ts';
import type { BiteMap } from '../core/cell/bite-map.ts';
import { parseJob } from '../core/plan/job-input.ts';

export type MapReply =
  | { readonly is: 'progress'; readonly share: number }
  | { readonly is: 'map'; readonly map: BiteMap; readonly done: boolean }
  | { readonly is: 'unsolved' }
  | { readonly is: 'error'; readonly error: string };

/** Spacings, m: a coarse grid for a first look, then one good enough to print. */
const GRIDS = [2e-3, 1e-3] as const;
/** Progress is reported in steps of at least this share. */
const STEP = 0.02;

/** Solves the bite map of a job file and replies with looks and progress. */
export function mapFor(file: unknown, reply: (one: MapReply) => void): void {
  try {
    const parsed = parseJob(file);
    if (!('job' in parsed) || parsed.job.piece.openArea === null) {
      reply({ is: 'unsolved' });
      return;
    }
    const { job } = parsed;
    const { openArea } = parsed.job.piece;
    for (const [n, spacing] of GRIDS.entries()) {
      const done = n === GRIDS.length - 1;
      let told = 0;
      const map = biteMap(job, openArea, spacing, {
        shouldStop: (share) => {
          if (done && share - told > STEP) reply({ is: 'progress', share: (told = share) });
          return false;
        },
      });
      if (map === null) {
        reply({ is: 'unsolved' });
        return;
      }
      reply({ is: 'map', map, done });
    }
  } catch (error) {
    reply({ is: 'error', error: String(error) });
  }
}
