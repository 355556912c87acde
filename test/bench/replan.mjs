/** Times a plan made again after a keystroke that leaves the cell as it was, as the worker of the app makes it. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';

const planner = fileURLToPath(new URL('../../src/lib/work/plan-draft.ts', import.meta.url));
const job = new URL('../../static/examples/seed-head-pendant.json', import.meta.url);
const BOUND = 16;

/** @returns {Promise<number>} 1 when it is over its bound */
export async function replan() {
  const folder = mkdtempSync(join(tmpdir(), 'etchwright-replan-'));
  const build = await rolldown({ input: planner, platform: 'node', tsconfig: false });
  const file = join(folder, 'plan.mjs');
  await build.write({ file, format: 'esm' });
  await build.close();
  /** @type {typeof import('../../src/lib/work/plan-draft.ts')} */
  const { planDraft } = await import(pathToFileURL(file).href);
  rmSync(folder, { recursive: true });
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
