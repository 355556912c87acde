/** Times a search of five thousand jobs, as the list does it with each letter typed. */
import { performance } from 'node:perf_hooks';
import { bundled } from './bundled.mjs';

const BOUND = 50;

/** @returns {Promise<number>} 1 when it is over its bound */
export async function search() {
  const { finderIn } = /** @type {typeof import('../../src/lib/session/find-jobs.ts')} */ (
    await bundled('src/lib/session/find-jobs.ts')
  );
  const jobs = Array.from({ length: 5000 }, (_, n) => ({
    id: String(n),
    title: `Piece ${n}`,
    metal: 'sterling-925',
    salt: 'NaNO3',
    depth: '0.1 mm',
    note: 'edges clean',
    step: /** @type {const} */ ('sheet'),
    touchedAt: Date.UTC(2026, 2, 3, 12),
    powered: false,
  }));
  const find = finderIn(jobs, (id) => id);
  const times = ['4321', '4322', '4323'].map((typed) => {
    const start = performance.now();
    find(typed);
    return performance.now() - start;
  });
  const least = Math.min(...times);
  console.log(`search, 5000 jobs    ${least.toFixed(1)} ms, bound ${BOUND} ms`);
  return least > BOUND ? 1 : 0;
}
