/** The project with some of its files changed in memory alone: what the compiler says of it, and how it runs. */
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { rolldown } from 'rolldown';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Lines that a newcomer writes into a file, above a line that stands there once. */
export interface Edit {
  readonly path: string;
  readonly above: string;
  readonly add: string;
}

/** Changed texts by their path from the root. */
export type Overlay = ReadonlyMap<string, string>;

export function overlayOf(edits: readonly Edit[]): Overlay {
  const overlay = new Map<string, string>();
  for (const { path, above, add } of edits) {
    const text = overlay.get(path) ?? readFileSync(join(root, path), 'utf8');
    const parts = text.split(above);
    if (parts.length !== 2) throw new Error(`${path} holds "${above}" ${parts.length - 1} times`);
    overlay.set(path, parts.join(add + above));
  }
  return overlay;
}

const fromRoot = (path: string): string => relative(root, path).split(sep).join('/');

const aliases = { $lib: join(root, 'src/lib'), $words: join(root, 'src/lib/words/en') };

/** The options of core: without the DOM a program is made in half the time. */
const config = ts.getParsedCommandLineOfConfigFile(join(root, 'src/lib/core/tsconfig.json'), undefined, {
  ...ts.sys,
  onUnRecoverableConfigFileDiagnostic: ({ messageText }) => {
    throw new Error(ts.flattenDiagnosticMessageText(messageText, '\n'));
  },
});

const roots = ['core', 'words/en'].flatMap((room) => {
  const folder = join(root, 'src/lib', room);
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(folder, path));
});

/** What is not changed is read and parsed once for all programs. */
const parsed = new Map<string, ts.SourceFile | undefined>();

/** Files that the compiler finds faults in, core and words with all that they import. */
export function faultyFiles(overlay: Overlay): string[] {
  const paths = Object.fromEntries(
    Object.entries(aliases).map(([alias, folder]) => [`${alias}/*`, [`${folder}/*`]]),
  );
  const options = { ...config?.options, paths };
  const host = ts.createCompilerHost(options);
  const plain = host.getSourceFile.bind(host);
  host.getSourceFile = (path, languageVersion) => {
    const changed = overlay.get(fromRoot(path));
    if (changed !== undefined) return ts.createSourceFile(path, changed, languageVersion);
    if (!parsed.has(path)) parsed.set(path, plain(path, languageVersion));
    return parsed.get(path);
  };
  const program = ts.createProgram({ rootNames: roots, options, host });
  const faults = [...program.getOptionsDiagnostics(), ...program.getSyntacticDiagnostics()];
  return [
    ...new Set(
      [...faults, ...program.getSemanticDiagnostics()].map(({ file }) =>
        file ? fromRoot(file.fileName) : 'the options',
      ),
    ),
  ].sort();
}

/** The module of an entry's text, bundled from the changed project. */
export async function runWith(overlay: Overlay, entry: string): Promise<unknown> {
  const entryPath = join(root, 'test/architecture/entry.ts');
  const build = await rolldown({
    input: entryPath,
    platform: 'node',
    resolve: { alias: aliases },
    tsconfig: false,
    plugins: [
      {
        name: 'overlay',
        resolveId: (id) => (id === entryPath ? id : null),
        load: (id) => (id === entryPath ? entry : (overlay.get(fromRoot(id)) ?? null)),
      },
    ],
  });
  const folder = mkdtempSync(join(tmpdir(), 'etchwright-overlay-'));
  try {
    const file = join(folder, 'module.mjs');
    await build.write({ file, format: 'esm' });
    return (await import(/* @vite-ignore */ pathToFileURL(file).href)) as unknown;
  } finally {
    await build.close();
    rmSync(folder, { recursive: true });
  }
}
