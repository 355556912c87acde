import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const sources = [
  'package.json',
  'svelte.config.js',
  'tsconfig.json',
  'vite.config.ts',
  'src',
  'static',
  'test/projects.ts',
];

/**
 * Builds a copy of the tree: a build laid over one that is being served would take its files away.
 * @param {string} root
 * @returns {{ app: string, remove: () => void }}
 */
export function ownBuild(root) {
  const app = mkdtempSync(join(tmpdir(), 'etchwright-build-'));
  for (const path of sources) cpSync(join(root, path), join(app, path), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(app, 'node_modules'), 'junction');
  execFileSync(
    process.execPath,
    [join(app, 'node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'warn'],
    {
      cwd: app,
      stdio: 'inherit',
    },
  );
  return {
    app,
    remove: () => {
      rmSync(app, { recursive: true, force: true });
    },
  };
}
