/**
 * What is slow to prove, at ten times the gate's counts: `npm run proofs`. Random walks, jobs and spoilt files; and
 * the command line in a bare copy of the tree, installed as somebody who only plans would install it.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bareCopy } from './bare-copy.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { status } = spawnSync(
  process.execPath,
  [join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'test/property', 'test/procedure'],
  { cwd: root, stdio: 'inherit', env: { ETCHWRIGHT_PROOFS: '10', ...process.env } },
);
const fault = bareCopy(root);
console.log(`command line without development packages: ${fault ?? 'plans as it does here'}`);
process.exitCode = status === 0 && fault === undefined ? 0 : 1;
