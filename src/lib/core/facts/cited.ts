import { sources } from './sources.ts';
import type { SourceId } from './sources.ts';
import { tables } from './tables.ts';

export type TableId = keyof typeof tables;

/** One place in the tables that names a source. */
export interface Citation {
  readonly source: SourceId;
  readonly table: TableId;
  /** keys from the table down to the fact, such as `NaCl`, `density` */
  readonly path: readonly string[];
  /** where in the source; empty when not given */
  readonly locator: string;
}

const isSource = (id: unknown): id is SourceId => typeof id === 'string' && Object.hasOwn(sources, id);

function walk(table: TableId, node: unknown, path: readonly string[], found: Citation[]): void {
  if (typeof node !== 'object' || node === null) return;
  const { source, locator } = node as { source?: unknown; locator?: unknown };
  if (isSource(source))
    found.push({ source, table, path, locator: typeof locator === 'string' ? locator : '' });
  for (const [key, value] of Object.entries(node)) walk(table, value, [...path, key], found);
}

/** Every fact that names a source, in the order of the tables. */
export function citations(): readonly Citation[] {
  const found: Citation[] = [];
  for (const [table, node] of Object.entries(tables)) walk(table as TableId, node, [], found);
  return found;
}
