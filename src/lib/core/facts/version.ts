import { tables } from './tables.ts';

/** 32-bit FNV-1a of a text's UTF-16 units, as 8 hex digits (Fowler, Noll, Vo). */
function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/** Names the data a plan was made with: release date of the tables and their fingerprint. */
export const dataVersion = `2026-11-26.${fingerprint(JSON.stringify(tables))}`;
