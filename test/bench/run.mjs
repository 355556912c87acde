/**
 * Times the field, the mask, a search, the command line as whole processes, then the pages, the papers, a tap and
 * thousands of jobs in the browser: `npm run bench`. Fails over its bounds; run it alone on the machine. The app may
 * be served meanwhile: the bench builds and serves a copy.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { freePort } from '../gate/serve.mjs';
import { distance } from './distance.mjs';
import { field } from './field.mjs';
import { ownBuild } from './own-build.mjs';
import { pages } from './pages.mjs';
import { replan } from './replan.mjs';
import { search } from './search.mjs';

const job = 'static/examples/seed-head-pendant.json';
const out = join(tmpdir(), 'etchwright-bench.pdf');
const RUNS = 5;

/** @type {{ name: string, command: string, args: string[], seconds: number }[]} */
const cases = [
  { name: 'plan, through npm', command: 'npm', args: ['run', '--silent', 'plan', '--', job], seconds: 1.2 },
  { name: 'plan, node alone', command: 'node', args: ['src/cli/run.mjs', 'plan', job], seconds: 1 },
  {
    name: 'sheet, through npm',
    command: 'npm',
    args: ['run', '--silent', 'sheet', '--', job, '--out', out],
    seconds: 3,
  },
];

execFileSync('node', ['src/cli/run.mjs', 'plan', job], { stdio: 'ignore' }); // bundles once

let slow = (await field()) + (await replan()) + (await distance()) + (await search());
for (const { name, command, args, seconds } of cases) {
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    const { status } = spawnSync(command, args, { stdio: 'ignore', shell: process.platform === 'win32' });
    if (status !== 0) throw new Error(`${name} ended with ${status}`);
    return (performance.now() - start) / 1000;
  }).sort((a, b) => a - b);
  const median = /** @type {number} */ (times[Math.floor(RUNS / 2)]);
  if (median > seconds) slow += 1;
  const [least, most] = [times[0], times.at(-1)].map((time) => (time ?? 0).toFixed(2));
  console.log(
    `${name.padEnd(20)} ${least} ${median.toFixed(2)} ${most} s (least, median, most), bound ${seconds} s`,
  );
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const { app, remove } = ownBuild(root);
try {
  for (const { name, value, bound, unit, atLeast } of await pages(app)) {
    if (atLeast ? value < bound : value > bound) slow += 1;
    console.log(`${name.padEnd(20)} ${value.toFixed(2)} ${unit}, bound ${bound}`);
  }
  const playwright = join(root, 'node_modules/@playwright/test/cli.js');
  const browser = spawnSync(process.execPath, [playwright, 'test', '-c', 'test/bench'], {
    cwd: root,
    env: { ...process.env, ETCHWRIGHT_APP: app, ETCHWRIGHT_PORT: String(await freePort()) },
    stdio: 'inherit',
  });
  if (browser.status !== 0) slow += 1;
} finally {
  remove();
}
process.exitCode = slow > 0 ? 1 : 0;
