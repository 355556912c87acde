/**
 * Who may import whom, as data, and the checks that hold the sources to it. Every check is a function of
 * source texts, so that the test can also feed it faults and see them caught.
 */
import { posix } from 'node:path';
import ts from 'typescript';

export interface SourceFile {
  /** From the repository's root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

interface Reference {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

const belowCell = ['core/units', 'core/facts', 'core/job', 'core/chemistry', 'core/field', 'core/mask'];
const belowRules = [...belowCell, 'core/cell', 'core/learn', 'core/run'];
const core = [...belowRules, 'core/rules', 'core/plan'];

/** A room, and the rooms it may import besides itself; a `type:` entry may lend its types only. */
const rooms: Readonly<Record<string, readonly string[]>> = {
  'core/units': [],
  'core/facts': ['core/units'],
  'core/job': ['core/units', 'core/facts'],
  'core/chemistry': ['core/units', 'core/facts'],
  'core/field': ['core/units'],
  'core/mask': ['core/units'],
  'core/cell': belowCell,
  'core/learn': ['core/units', 'core/run'],
  'core/run': ['core/units', 'core/chemistry'],
  'core/rules': belowRules,
  'core/plan': [...belowRules, 'core/rules'],
  words: [...core, 'type:procedure'],
  link: core,
  procedure: [...core, 'words'],
  work: core,
  notebook: [...core, 'words', 'type:procedure'],
  print: [...core, 'words'],
  session: [...core, 'words', 'link', 'procedure', 'work', 'notebook'],
  ui: [...core, 'words', 'link', 'procedure', 'work', 'notebook', 'print', 'session'],
  routes: ['ui', 'session', 'words', ...core.map((room) => `type:${room}`)],
  cli: [...core, 'words', 'link', 'print'],
  'service-worker': [],
};

/** Pure packages: they know no clock, no chance and no screen. */
const corePackages = ['valibot', '@valibot/to-json-schema'];

/** Its one computed import is of the bundle it has just made. */
const launcher = 'src/cli/run.mjs';

/** The room of a path, or undefined for a path outside every room. */
export function roomOf(path: string): string | undefined {
  if (/^src\/service-worker[./]/.test(path)) return 'service-worker';
  const inside = /^src\/(?:lib\/)?(.*)$/.exec(path)?.[1];
  return Object.keys(rooms).find((room) => inside === room || inside?.startsWith(`${room}/`));
}

const isCore = (room: string | undefined): boolean => room?.startsWith('core/') ?? false;

/** A component's scripts; the whole text of any other file. */
function scriptOf({ path, text }: SourceFile): string {
  if (!path.endsWith('.svelte')) return text;
  return [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1] ?? '').join('\n');
}

function walk(file: SourceFile, visit: (node: ts.Node) => void): void {
  const source = ts.createSourceFile(
    file.path,
    scriptOf(file),
    ts.ScriptTarget.Latest,
    true,
    ts.ScriptKind.TS,
  );
  const step = (node: ts.Node): void => {
    visit(node);
    ts.forEachChild(node, step);
  };
  step(source);
}

const literal = (node: ts.Node | undefined): string | undefined =>
  node && ts.isStringLiteralLike(node) ? node.text : undefined;

/** Static, dynamic and type imports, re-exports, and `new URL('…', import.meta.url)` as workers use it. */
export function referencesOf(file: SourceFile): Reference[] {
  const found: Reference[] = [];
  walk(file, (node) => {
    if (ts.isImportDeclaration(node)) {
      const typeOnly = node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
      found.push({ specifier: literal(node.moduleSpecifier) ?? '', typeOnly });
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier) {
      found.push({ specifier: literal(node.moduleSpecifier) ?? '', typeOnly: node.isTypeOnly });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      found.push({ specifier: literal(node.argument.literal) ?? '', typeOnly: true });
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      found.push({ specifier: literal(node.arguments[0]) ?? '', typeOnly: false });
    } else if (ts.isNewExpression(node) && node.expression.getText() === 'URL') {
      const specifier = literal(node.arguments?.[0]);
      if (specifier !== undefined && node.arguments?.[1]?.getText() === 'import.meta.url') {
        found.push({ specifier, typeOnly: false });
      }
    }
  });
  return found;
}

/** The path a specifier points at, or undefined for a package. */
export function targetOf(from: string, specifier: string): string | undefined {
  const bare = specifier.replace(/[?#].*$/, '');
  if (bare === '$lib' || bare.startsWith('$lib/')) return posix.join('src/lib', bare.slice('$lib'.length));
  if (bare.startsWith('$words/')) return posix.join('src/lib/words/en', bare.slice('$words'.length));
  if (bare.startsWith('.')) return posix.join(posix.dirname(from), bare);
  return undefined;
}

function packageFault(room: string, specifier: string): string | undefined {
  if (/^pdfmake(\/|$)/.test(specifier) && room !== 'print') return 'only print may import the PDF library';
  if (specifier.startsWith('node:') && room !== 'cli') return 'only cli runs on Node';
  if (isCore(room) && !corePackages.includes(specifier)) return 'core takes only the pure packages listed';
  return undefined;
}

/** Imports against the table. */
export function importFaults(file: SourceFile): string[] {
  const room = roomOf(file.path);
  if (room === undefined) return [`${file.path}: lies in no room of the table`];
  const may = [room, ...(rooms[room] ?? [])];
  return referencesOf(file).flatMap(({ specifier, typeOnly }) => {
    const fault = (why: string): string[] => [`${file.path}: imports '${specifier}', but ${why}`];
    if (specifier === '') return file.path === launcher ? [] : fault('a computed import cannot be checked');
    const target = targetOf(file.path, specifier);
    if (target === undefined) {
      const why = packageFault(room, specifier);
      return why === undefined ? [] : fault(why);
    }
    if (!target.startsWith('src/')) return isCore(room) ? fault('core stays within src') : [];
    // SvelteKit writes a route's own types beside it.
    if (target.endsWith('/$types')) return [];
    const other = roomOf(target);
    if (other === undefined) return fault('that lies in no room of the table');
    if (may.includes(other)) return [];
    if (may.includes(`type:${other}`)) return typeOnly ? [] : fault(`${room} may import its types only`);
    return fault(`${room} may not import ${other}`);
  });
}

const impureNames = ['Date', 'performance', 'console', 'process', 'fetch', 'globalThis'];
const timerNames = ['setTimeout', 'setInterval'];

/** A name read as a value: not a property, a key, a type or the name of a declaration. */
function isRead(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent) || ts.isVariableDeclaration(parent) || ts.isParameter(parent)) {
    return parent.initializer === node;
  }
  return (
    ts.isExpression(parent) ||
    ts.isTemplateSpan(parent) ||
    ts.isStatement(parent) ||
    ts.isShorthandPropertyAssignment(parent)
  );
}

/** Clock, chance and the outside world, which core must be handed and never fetch for itself. */
export function purityFaults(file: SourceFile): string[] {
  if (!isCore(roomOf(file.path))) return [];
  const found: string[] = [];
  walk(file, (node) => {
    if (ts.isIdentifier(node) && impureNames.includes(node.text) && isRead(node)) {
      found.push(`${file.path}: uses ${node.text}`);
    }
    if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random') {
      found.push(`${file.path}: uses Math.random`);
    }
  });
  return found;
}

/** Timers outside session, their one home. */
export function timerFaults(file: SourceFile): string[] {
  if (!file.path.startsWith('src/lib/') || roomOf(file.path) === 'session') return [];
  const found: string[] = [];
  walk(file, (node) => {
    if (ts.isIdentifier(node) && timerNames.includes(node.text) && isRead(node)) {
      found.push(`${file.path}: uses ${node.text}, whose home is session`);
    }
  });
  return found;
}

const mostLines = 400;

/** Files too long to hold in mind. The tables of core/facts are exempt: data is looked up, not followed. */
export function lengthFaults({ path, text }: SourceFile): string[] {
  if (roomOf(path) === 'core/facts') return [];
  const lines = text.replace(/\n$/, '').split('\n').length;
  return lines > mostLines ? [`${path}: ${lines} lines, at most ${mostLines}`] : [];
}

// The name of SVG itself, which no browser ever asks for.
const svgName = 'http://www.w3.org/2000/svg';

/** Web addresses in the program: only the sources of facts and the words shown to people may hold any. */
export function addressFaults(file: SourceFile): string[] {
  const room = roomOf(file.path);
  if (room === 'core/facts' || room === 'words') return [];
  const found: string[] = [];
  const look = (text: string): void => {
    for (const [address] of text.replaceAll(svgName, '').matchAll(/https?:\/\/[^\s'"`)]*/g)) {
      found.push(`${file.path}: holds the address ${address}`);
    }
  };
  if (/\.(ts|js|mjs)$/.test(file.path)) {
    walk(file, (node) => {
      if (
        ts.isStringLiteralLike(node) ||
        ts.isTemplateHead(node) ||
        ts.isTemplateMiddleOrTemplateTail(node)
      ) {
        look(node.text);
      }
    });
  } else {
    look(file.text.replace(/<!--[\s\S]*?-->|\/\*[\s\S]*?\*\//g, ''));
  }
  return found;
}
