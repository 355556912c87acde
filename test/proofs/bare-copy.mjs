import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const job = 'static/examples/seed-head-pendant.json';
const needed = ['package.json', 'package-lock.json', '.npmrc', 'src', job];

/**
 * Installs a copy without development packages and plans a job there.
 * @param {string} root
 * @returns {string | undefined} what went wrong
 */
export function bareCopy(root) {
  const copy = mkdtempSync(join(tmpdir(), 'etchwright-bare-'));
  /**
   * @param {string} folder
   * @param {...string} args
   */
  const npm = (folder, ...args) =>
    spawnSync('npm', args, { cwd: folder, encoding: 'utf8', shell: process.platform === 'win32' });
  try {
    for (const path of needed) cpSync(join(root, path), join(copy, path), { recursive: true });
    const installed = npm(copy, 'ci', '--omit=dev');
    if (installed.status !== 0) return `npm ci failed: ${installed.stderr.slice(-400)}`;
    const [here, there] = [root, copy].map((folder) => npm(folder, 'run', '--silent', 'plan', '--', job));
    if (there?.status !== 0) return `exit ${there?.status}: ${there?.stderr.slice(-400)}`;
    return there.stdout === here?.stdout ? undefined : 'another plan than here';
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}
