/** Brings a source of the app into this process, bundled as the app bundles it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';
import { wordsFolder } from '../../src/lib/words/folder.mjs';

/**
 * @param {string} path from the root of the project
 * @returns {Promise<unknown>} its module
 */
export async function bundled(path) {
  const folder = mkdtempSync(join(tmpdir(), 'etchwright-bench-'));
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const build = await rolldown({
    input: join(root, path),
    platform: 'node',
    resolve: { alias: { $lib: join(root, 'src/lib'), $words: join(root, wordsFolder) } },
    tsconfig: false,
  });
  const file = join(folder, 'module.mjs');
  await build.write({ file, format: 'esm' });
  await build.close();
  const module = /** @type {unknown} */ (await import(pathToFileURL(file).href));
  rmSync(folder, { recursive: true });
  return module;
}
