import { parse } from 'svelte/compiler';
import ts from 'typescript';
import { scriptsOf } from './markup.ts';

/*
 * What hides a text that is missing: a table of texts under any string at all, which no compiler can find a gap in,
 * and a fallback that shows something else where the text should stand.
 */

const parsed = (path: string, script: string): ts.SourceFile =>
  ts.createSourceFile(path, script, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);

const everyNode = (node: ts.Node, see: (node: ts.Node) => void): void => {
  see(node);
  ts.forEachChild(node, (child) => {
    everyNode(child, see);
  });
};

const said = (node: ts.Node): string => node.getText().replace(/\s+/g, ' ');

/** `Record<string, string>`, alone or as what a record holds, whether it is read-only or partial or not. */
function isLoose(type: ts.TypeNode | undefined): boolean {
  if (!type || !ts.isTypeReferenceNode(type)) return false;
  const [first, second] = type.typeArguments ?? [];
  if (['Readonly', 'Partial'].includes(said(type.typeName))) return isLoose(first);
  if (said(type.typeName) !== 'Record' || !first) return false;
  return (
    (first.kind === ts.SyntaxKind.StringKeyword && second?.kind === ts.SyntaxKind.StringKeyword) ||
    isLoose(second)
  );
}

/** Tables of texts, and casts to one, whose keys may be any string. What a function is handed may come from storage. */
export function looseTables(path: string, script: string): string[] {
  const found: string[] = [];
  everyNode(parsed(path, script), (node) => {
    if (ts.isVariableDeclaration(node) && isLoose(node.type)) found.push(`${path}: ${said(node.name)}`);
    if (ts.isPropertySignature(node) && isLoose(node.type)) found.push(`${path}: ${said(node.name)}`);
    if (ts.isAsExpression(node) && isLoose(node.type)) found.push(`${path}: ${said(node)}`);
  });
  return found;
}

const isFallback = (node: ts.Expression): boolean =>
  ts.isStringLiteralLike(node) ||
  ts.isTemplateExpression(node) ||
  (ts.isIdentifier(node) && node.text !== 'undefined');

const fallbacksIn = (path: string, script: string, hides: (looked: ts.Expression) => boolean): string[] => {
  const found: string[] = [];
  everyNode(parsed(path, script), (node) => {
    if (
      ts.isBinaryExpression(node) &&
      node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken &&
      isFallback(node.right) &&
      hides(node.left)
    )
      found.push(`${path}: ${said(node)}`);
  });
  return found;
};

/** In a file of texts: `?? 'something'` and `?? id`. */
export const textFallbacks = (path: string, script: string): string[] =>
  fallbacksIn(path, script, () => true);

/** Names that a file takes from the words room. */
function wordsIn(path: string, script: string): ReadonlySet<string> {
  const names = new Set<string>();
  everyNode(parsed(path, script), (node) => {
    if (!ts.isImportDeclaration(node) || !said(node.moduleSpecifier).startsWith(`'$words/`)) return;
    const named = node.importClause?.namedBindings;
    if (named && ts.isNamedImports(named)) for (const { name } of named.elements) names.add(name.text);
  });
  return names;
}

/** What a look-up begins at: `names` of `names[id]?.hint`. */
const rootOf = (node: ts.Expression): ts.Expression =>
  ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node) || ts.isCallExpression(node)
    ? rootOf(node.expression)
    : node;

/** Expressions in the markup of a component, as a script. */
function markupOf(path: string, source: string): string {
  const found: string[] = [];
  const step = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, start, end } = node as { type?: string; start?: number; end?: number };
    if (type === 'LogicalExpression') found.push(source.slice(start, end));
    else Object.values(node).forEach(step);
  };
  step(parse(source, { modern: true, filename: path }).fragment);
  return found.join(';\n');
}

/** Elsewhere, in a component's markup too: the same behind a look-up in a table of texts. */
export function shownFallbacks(path: string, source: string): string[] {
  const isComponent = path.endsWith('.svelte');
  const script = isComponent ? `${scriptsOf(source)};\n${markupOf(path, source)}` : source;
  const words = wordsIn(path, script);
  return fallbacksIn(path, script, (looked) => {
    const root = rootOf(looked);
    return root !== looked && ts.isIdentifier(root) && words.has(root.text);
  });
}
