/** Times a plan made again after a keystroke that leaves the cell as it was, as the worker of the app makes it. */
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { bundled } from './bundled.mjs';

const job = new URL('../../static/examples/seed-head-pendant.json', import.meta.url);
const BOUND = 16;

/** @returns {Promise<number>} 1 when it is over its bound */
export async function replan() {
  const { planDraft } = /** @type {typeof import('../../src/lib/work/plan-draft.ts')} */ (
    await bundled('src/lib/work/plan-draft.ts')
  );
  const typed = JSON.parse(readFileSync(job, 'utf8'));
  const times = Array.from({ length: 60 }, (_, n) => {
    typed.piece.depth = { value: 60 + n, unit: 'um' };
    const start = performance.now();
    planDraft({ typed, filled: typed });
    return performance.now() - start;
  })
    .slice(20)
    .sort((a, b) => a - b);
  const median = times[20] ?? 0;
  console.log(`replan, a keystroke  ${median.toFixed(1)} ms (median), bound ${BOUND} ms`);
  return median > BOUND ? 1 : 0;
}
