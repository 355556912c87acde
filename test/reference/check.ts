import { expect, test } from 'vitest';
import { published } from './publications.ts';
import type { PublicationId } from './publications.ts';

/** One comparison of our result with a number from outside. */
export interface Check {
  readonly source: PublicationId;
  readonly row: string;
}

const registered: Check[] = [];
let running = true;

/** From here on checks are noted without being run: for the test that counts them. */
export const onlyCount = (): void => {
  running = false;
};

/** All checks of the files imported so far. */
export const registeredChecks = (): readonly Check[] => registered;

/**
 * A test against an outside number; its title names source and row.
 * @param row the table, row or example in the source
 */
export function check(source: PublicationId, row: string, compare: () => void): void {
  registered.push({ source, row });
  if (running) test(`${published[source].title}: ${row}`, compare);
}

/**
 * Relative closeness.
 * @param tolerance share of the wanted value
 */
export function near(found: number, wanted: number, tolerance: number): void {
  const off = Math.abs(found - wanted) / Math.abs(wanted);
  expect(off, `${found} found, ${wanted} ± ${tolerance * 100} % wanted`).toBeLessThanOrEqual(tolerance);
}
