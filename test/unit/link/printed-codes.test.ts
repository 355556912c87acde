import { expect, test } from 'vitest';
import type { JobInput } from '../../../src/lib/core/plan/job-input.ts';
import { readJobCode, jobCode } from '../../../src/lib/link/job-code.ts';
import { storedLines } from '../../fixtures/stored/read.ts';

/**
 * Codes as version 1 of the layout printed them, with the job that each was read as then: every kind of piece, tub,
 * area and supply, and nearly every word. Sheets live for years. Never changed: a new version is a new file.
 */
const printed = storedLines('printed-codes-1') as readonly {
  readonly text: string;
  readonly job: JobInput;
}[];

test('every printed code of version 1 reads as the job it was, and is printed again letter by letter', () => {
  expect(printed.length).toBeGreaterThan(80);
  for (const { text, job } of printed) {
    const read = readJobCode(text);
    if ('fault' in read) throw new Error(`${text}: ${read.fault}`);
    const { units: _units, untyped: _left, workshop: _own, ...plain } = read.job;
    expect(plain, text).toEqual(job);
    expect(jobCode(read.job)).toBe(text);
  }
});
