import { biteMap } from '../core/cell/bite-map.ts';
import type { BiteMap } from '../core/cell/bite-map.ts';
import { parseJob } from '../core/plan/job-input.ts';

export type MapReply =
  | { readonly is: 'progress'; readonly share: number }
  | { readonly is: 'map'; readonly map: BiteMap; readonly done: boolean }
  | { readonly is: 'unsolved' }
  | { readonly is: 'error'; readonly error: string };

/** m: first a look, then the grid that is worth printing. */
const GRIDS = [2e-3, 1e-3] as const;
/** Progress is told no more often, as a share. */
const STEP = 0.02;

/** A job file in; looks and progress out. */
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
