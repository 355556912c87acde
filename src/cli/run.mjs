/**
 * Starts the command line. Node 20 cannot read TypeScript, so main.ts is bundled once into
 * node_modules/.cache/etchwright/cli/<stamp>/ and bundled again only when a source file has changed.
 *
 * The bundler is a dependency and not a tool for development, so that `npm ci --omit=dev` is enough. Bundling at
 * install would go stale with the first edit. Newer Nodes strip types, but would need a hook for the `$words` alias
 * and would read two hundred files at each start: a second way to run the same program, and the slower one.
 */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import module from 'node:module';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { wordsFolder } from '../lib/words/folder.mjs';

// Newer Nodes keep compiled code between runs; Node 20 has no such call.
Reflect.get(module, 'enableCompileCache')?.();

const root = fileURLToPath(new URL('../..', import.meta.url));
const cache = join(root, 'node_modules/.cache/etchwright/cli');
const hour = 3_600_000;

/** A name for the language and the state of the sources: it moves when any file is added, removed, renamed or written. */
function stampOf() {
  let stamp = 2_166_136_261;
  /** @param {string} text */
  const mix = (text) => {
    for (let i = 0; i < text.length; i++) stamp = Math.imul(stamp ^ text.charCodeAt(i), 16_777_619);
  };
  /** @param {string} path */
  const mixFile = (path) => {
    const { mtimeMs, size } = statSync(path);
    mix(`${path} ${mtimeMs} ${size}\n`);
  };
  /** @param {string} folder */
  const mixFolder = (folder) => {
    for (const entry of readdirSync(folder, { withFileTypes: true })) {
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) mixFolder(path);
      else mixFile(path);
    }
  };
  mixFolder(join(root, 'src/lib'));
  mixFolder(join(root, 'src/cli'));
  mixFile(join(root, 'package.json'));
  mix(wordsFolder);
  return (stamp >>> 0).toString(16).padStart(8, '0');
}

/**
 * Bundles into a folder of its own and renames it into place, so that two starts at once do not clash:
 * the slower one finds the folder taken and uses it.
 * @param {string} target
 */
async function bundle(target) {
  const { rolldown } = await import('rolldown');
  const draft = `${target}.${process.pid}.draft`;
  const build = await rolldown({
    input: join(root, 'src/cli/main.ts'),
    platform: 'node',
    // Read from node_modules when it is asked for: the PDF library is large and most commands need none of it.
    external: [/^pdfmake/],
    resolve: { alias: { $lib: join(root, 'src/lib'), $words: join(root, wordsFolder) } },
    tsconfig: false,
  });
  await build.write({
    dir: draft,
    format: 'esm',
    entryFileNames: 'main.mjs',
    chunkFileNames: '[name]-[hash].mjs',
  });
  await build.close();
  try {
    renameSync(draft, target);
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    if (!existsSync(join(target, 'main.mjs'))) throw error;
  }
}

/** Old bundles go after an hour: a process started just before may still be reading its own. */
function sweep() {
  for (const name of readdirSync(cache)) {
    const path = join(cache, name);
    const stat = statSync(path, { throwIfNoEntry: false });
    if (stat && Date.now() - stat.mtimeMs > hour) rmSync(path, { recursive: true, force: true });
  }
}

const target = join(cache, stampOf());
if (!existsSync(join(target, 'main.mjs'))) {
  mkdirSync(cache, { recursive: true });
  sweep();
  await bundle(target);
}
const { main } = await import(pathToFileURL(join(target, 'main.mjs')).href);
process.exitCode = await main(process.argv.slice(2));
