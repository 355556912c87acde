/** Brings a source of the app into this process, bundled as the app bundles it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';

/**
 * @param {string} path from the root of the project
 * @returns {Promise<unknown>} its module
 */
export async function bundled(path) {
  const folder = mkdtempSync(join(tmpdir(), 'etchwright-bench-'));
  const input = fileURLToPath(new URL(`../../${path}`, import.meta.url));
  const build = await rolldown({ input, platform: 'node', tsconfig: false });
  const file = join(folder, 'module.mjs');
  await build.write({ file, format: 'esm' });
  await build.close();
  const module = /** @type {unknown} */ (await import(pathToFileURL(file).href));
  rmSync(folder, { recursive: true });
  return module;
}
