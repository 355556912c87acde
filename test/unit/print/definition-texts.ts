import type { TDocumentDefinitions } from 'pdfmake/interfaces';

type Node = Readonly<Record<string, unknown>>;

/** Keys of a document definition that hold what a reader sees, in the order it is read. */
const holders = ['header', 'section', 'stack', 'columns', 'table', 'body', 'footer'] as const;

/** The letters of one text: a string, or runs of it. */
function joined(text: unknown): string {
  if (Array.isArray(text)) return text.map(joined).join('');
  return typeof text === 'object' && text !== null ? joined((text as Node)['text']) : String(text);
}

/** Runs and lists both are arrays: a run has a text and no place of its own. */
function linesOf(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(linesOf);
  if (typeof node === 'string') return [node];
  // heads and feet are worked out page by page
  if (typeof node === 'function')
    return [1, 2].flatMap((page) => linesOf((node as (page: number, pages: number) => unknown)(page, 2)));
  if (typeof node !== 'object' || node === null) return [];
  const { text, svg } = node as Node;
  const drawn = typeof svg === 'string' ? [...svg.matchAll(/<text[^>]*>([^<]*)/g)].map(([, it]) => it) : [];
  return [
    ...(text === undefined ? [] : [joined(text)]),
    ...drawn.map(String),
    ...holders.flatMap((key) => linesOf((node as Node)[key])),
  ];
}

/** Every text of a document, a line each, in the order of its definition. */
export const textsOf = (definition: TDocumentDefinitions): readonly string[] =>
  linesOf(definition.content).filter((line) => line.trim() !== '');

/** A length, an area or a temperature in metric: a number, a blank or nothing, then its unit. */
export const metric = /(?:^|[\d_\s\u00a0])(?:mm|cm|dm|μm|mm²|cm²|A\/dm²|K\/min)(?![\w/³])|°C/u;
