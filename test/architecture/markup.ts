import { parse } from 'svelte/compiler';
import ts from 'typescript';

/** What screens may not hold: texts, which live in words, and bare controls, which live in the kit. */

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

/** The name of the app is the same in every language. */
const isText = (text: string): boolean => /\p{L}/u.test(text.replaceAll('Etchwright', ''));

/** Attributes that are read out or shown, on elements and on our own parts. */
const spoken = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-roledescription',
  'aria-valuetext',
  'caption',
  'hint',
  'label',
  'legend',
  'placeholder',
  'summary',
  'title',
]);

/** Controls that only the kit may hold. */
const bare = new Set(['button', 'select', 'table', 'textarea']);

function visit(value: unknown, see: (node: Node, parents: readonly Node[]) => boolean | undefined): void {
  const step = (inner: unknown, parents: readonly Node[]): void => {
    if (Array.isArray(inner)) {
      for (const one of inner) step(one, parents);
      return;
    }
    if (!isNode(inner)) return;
    if (see(inner, parents) === false) return;
    for (const [key, child] of Object.entries(inner)) {
      if (key !== 'start' && key !== 'end' && key !== 'loc') step(child, [...parents, inner]);
    }
  };
  step(value, []);
}

/** Strings of an expression that would be shown: not the keys that it looks up, nor what it compares with. */
function shownStrings(expression: unknown): string[] {
  const found: string[] = [];
  visit(expression, (node, parents) => {
    const parent = parents.at(-1);
    if (node.type === 'BinaryExpression' && node['operator'] !== '+') return false;
    if (node.type === 'MemberExpression' || node.type === 'CallExpression') return false;
    if (parent?.type === 'ConditionalExpression' && parent['test'] === node) return false;
    if (node.type === 'Literal' && typeof node['value'] === 'string') found.push(node['value']);
    if (node.type === 'TemplateElement') found.push((node['value'] as { raw: string }).raw);
    return undefined;
  });
  return found.filter(isText);
}

/** Literal texts in the markup of a component. */
export function textFaults(path: string, source: string): string[] {
  const found: string[] = [];
  const fault = (what: string): void => {
    found.push(`${path}: holds the text "${what.trim().replace(/\s+/g, ' ')}"`);
  };
  const { fragment } = parse(source, { modern: true, filename: path });
  visit(fragment, (node, parents) => {
    const parent = parents.at(-1);
    if (node.type === 'Attribute') {
      if (spoken.has(node['name'] as string)) {
        const value = node['value'];
        for (const part of Array.isArray(value) ? (value as Node[]) : isNode(value) ? [value] : []) {
          if (part.type === 'Text' && isText(part['data'] as string)) fault(part['data'] as string);
          if (part.type === 'ExpressionTag') shownStrings(part['expression']).forEach(fault);
        }
      }
      return false;
    }
    if (node.type === 'Text' && parent?.type === 'Fragment' && isText(node['data'] as string)) {
      fault(node['data'] as string);
    }
    if (node.type === 'ExpressionTag' && parent?.type === 'Fragment') {
      shownStrings(node['expression']).forEach(fault);
      return false;
    }
    return node.type === 'StyleSheet' ? false : undefined;
  });
  return found;
}

/** Keys under which a script keeps what is shown. */
const shownKeys = /^(label|title|hint|legend|text|caption|action|why|summary)$/;

/** Literal texts in a script: two words and more, or anything kept under a key that is shown. */
export function scriptTextFaults(path: string, script: string): string[] {
  const found: string[] = [];
  const source = ts.createSourceFile(path, script, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);
  const step = (node: ts.Node): void => {
    // what is thrown is for us
    if (ts.isThrowStatement(node) || ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      const key = ts.isPropertyAssignment(node.parent) ? node.parent.name.getText().replace(/['"]/g, '') : '';
      const words = /\p{L}{2,} \p{L}/u.test(node.text) || / \p{L}{2,}|\p{L}{2,}[ :.?!]$/u.test(node.text);
      const isPath = /^[MmLlHhVvCcQqAaZz\d\s.,-]+$/.test(node.text);
      if (!isPath && isText(node.text) && (words || shownKeys.test(key)))
        found.push(`${path}: holds the text "${node.text}"`);
    }
    ts.forEachChild(node, step);
  };
  step(source);
  return found;
}

/** The scripts of a component. */
export const scriptsOf = (source: string): string =>
  [...source.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1] ?? '').join('\n');

/** Controls of the browser's own outside the kit. */
export function bareFaults(path: string, source: string): string[] {
  const found: string[] = [];
  visit(parse(source, { modern: true, filename: path }).fragment, (node) => {
    if (node.type === 'RegularElement' && bare.has(node['name'] as string))
      found.push(`${path}: has a bare <${node['name'] as string}>`);
    return undefined;
  });
  return found;
}

/** Lines of style in a component. */
export const styleLines = (source: string): number =>
  [...source.matchAll(/<style[^>]*>\n([\s\S]*?)<\/style>/g)].reduce(
    (sum, match) => sum + (match[1] ?? '').split('\n').length - 1,
    0,
  );
