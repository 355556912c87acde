import { describe, expect, test } from 'vitest';
import { migrate, sequenceOf, sequences } from '$lib/notebook/migrations.ts';
import type { Stored } from '$lib/notebook/migrations.ts';
import { recordVersion } from '$lib/notebook/records.ts';

/** A case for each migration: what it must make of what. None is needed while nothing has changed shape. */
const cases: Readonly<Record<string, { readonly before: Stored; readonly after: Stored }>> = {};

const all = Object.values(sequences).flatMap((sequence) =>
  sequence.migrations.map((migration) => ({ sequence, migration })),
);

describe('the migrations of the notebook', () => {
  test('are each exercised by a case, and no case is without its migration', () => {
    expect(Object.keys(cases).toSorted()).toEqual(all.map(({ migration }) => migration.id).toSorted());
  });
  test('lead to the version that is written', () => {
    expect(Object.values(sequences).map(({ latest }) => latest)).toEqual([
      recordVersion,
      recordVersion,
      recordVersion,
    ]);
  });
  test('make of each case what it says', () => {
    for (const { migration } of all) {
      const { before, after } = cases[migration.id] ?? { before: {}, after: {} };
      expect(migration.up(before)).toEqual(after);
    }
  });
});

const tagged = sequenceOf('job', [
  { id: 'job/1', up: (old) => ({ ...old, tags: [] }) },
  { id: 'job/2', up: ({ note, ...rest }) => ({ ...rest, notes: [note] }) },
]);

describe('a sequence', () => {
  test.each([
    ['a gap', ['job/1', 'job/3']],
    ['a second start', ['job/2']],
    ['another kind', ['bath/1']],
    ['two of a number', ['job/1', 'job/1']],
  ])('is refused with %s', (_what, ids) => {
    expect(() =>
      sequenceOf(
        'job',
        ids.map((id) => ({ id, up: (old: Stored) => old })),
      ),
    ).toThrow(/found: .* expected: /);
  });
  test('raises a record from where it stands', () => {
    expect(migrate({ version: 1, note: 'a' }, tagged)).toEqual({ version: 3, tags: [], notes: ['a'] });
    expect(migrate({ version: 2, note: 'a' }, tagged)).toEqual({ version: 3, notes: ['a'] });
    expect(migrate({ version: 3, note: 'a' }, tagged)).toEqual({ version: 3, note: 'a' });
  });
  test.each([
    [{ version: 4 }],
    [{ version: '1' }],
    [{ version: 1.5 }],
    [{ version: 0 }],
    [{}],
    [null],
    ['x'],
    [[]],
  ])('leaves %j as it is', (raw) => {
    expect(migrate(raw, tagged)).toBe(raw);
  });
});
