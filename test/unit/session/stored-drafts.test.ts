import { describe, expect, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import type { ParsedJob } from '../../../src/lib/core/plan/job-input.ts';
import { draftFrom, unknownFields } from '../../../src/lib/session/draft.ts';
import { filledDraft, jobFileOf } from '../../../src/lib/session/job-file.ts';
import { storedLines } from '../../fixtures/stored/read.ts';

/** Drafts as version 1 of the record stored them, with the job files that they stood for then. Never changed. */
const stored = storedLines('drafts-1') as readonly {
  readonly stored: Readonly<Record<string, string>>;
  readonly file: object;
  readonly filled: object;
}[];

/** What a file is read as, but for whether its values were typed, and for what the workshop has: neither was said then. */
function readAs(file: object): ParsedJob {
  const parsed = parseJob(file, { areaLater: true });
  if ('faults' in parsed) return parsed;
  const { untyped: _left, workshop: _unsaid, ...job } = parsed.job;
  return { job };
}

describe('a draft of record version 1', () => {
  test.each(stored.map((one) => [JSON.stringify(one.stored).slice(0, 60), one] as const))('%s', (_, one) => {
    const draft = draftFrom(one.stored);
    expect(readAs(jobFileOf(draft))).toEqual(readAs(one.file));
    expect(readAs(jobFileOf(filledDraft(draft)))).toEqual(readAs(one.filled));
  });
});

test('a field of a later version stays in the draft, is named, and does not reach the job file', () => {
  const later = { 'bath.stirred': 'by hand', 'piece.metal': 'C11000' };
  const draft = draftFrom(later);
  expect(draftFrom({ ...draft, title: 'Saved again' })).toMatchObject(later);
  expect(unknownFields(draft)).toEqual(['bath.stirred']);
  expect(jobFileOf(draft)).toEqual(jobFileOf(draftFrom({ 'piece.metal': 'C11000' })));
});
