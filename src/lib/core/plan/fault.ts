/** One thing wrong with a job file: where, what stood there, what was wanted. */
export interface Fault {
  /** dotted path such as piece.depth; empty for the whole file */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** The line an engineer reads on stderr. */
export const faultLine = ({ path, found, expected }: Fault): string =>
  `${path === '' ? 'job' : path}: found ${found}, expected ${expected}`;

const LONGEST = 60;

/** A value as it stood in the file, shortened. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  // undefined, functions and the like have no JSON
  const text =
    typeof value === 'number'
      ? String(value)
      : ((JSON.stringify(value) as string | undefined) ?? typeof value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}
