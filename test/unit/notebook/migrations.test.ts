import { describe, expect, test } from 'vitest';
import { bathNow } from '$lib/notebook/bath-ledger.ts';
import { migrate, sequenceOf, sequences } from '$lib/notebook/migrations.ts';
import type { Stored } from '$lib/notebook/migrations.ts';
import { bathVersion, jobVersion, preferencesVersion } from '$lib/notebook/records.ts';
import { isUnreadable, readBath } from '$lib/notebook/store.ts';

/** A case for each migration: what it must make of what. */
const cases: Readonly<Record<string, { readonly before: Stored; readonly after: Stored }>> = {
  'job/1': {
    before: {
      version: 1,
      id: 'j',
      snapshot: { status: 'active', value: 'etch', context: { answers: {}, foundation: { mayMix: true } } },
      planAtStart: {
        job: { supply: { id: 'yield' } },
        figures: {
          depth: {
            working: {
              formula: 'y',
              inputs: [
                { id: 'yield', value: 0.95, evidence: 'commonPractice' },
                { id: 'offset', value: 2, evidence: 'fitted' },
                { id: 'leads', value: 0.1, evidence: 'fitted' },
              ],
            },
          },
        },
      },
    },
    after: {
      version: 1,
      id: 'j',
      snapshot: { status: 'active', value: 'etch', context: { answers: {}, basis: { mayMix: true } } },
      planAtStart: {
        job: { supply: { id: 'yield' } },
        figures: {
          depth: {
            working: {
              formula: 'y',
              inputs: [
                { id: 'currentEfficiency', value: 0.95, evidence: 'commonPractice' },
                { id: 'thresholdVoltage', value: 2, evidence: 'fitted' },
                { id: 'leads', value: 0.1, evidence: 'fitted' },
              ],
            },
          },
        },
      },
    },
  },
  'bath/1': {
    before: {
      version: 1,
      id: 'b',
      name: 'SILVER 1',
      salt: 'NaNO3',
      strength: 60,
      water: 'deionised',
      madeAt: 5,
      lastUsedAt: 9,
      chargeAh: 0.4,
      dissolved: { Ag: 120 },
      metalGroup: 'silver',
      volumeMl: 500,
      where: 'handed-over',
    },
    after: {
      version: 1,
      id: 'b',
      name: 'SILVER 1',
      salt: 'NaNO3',
      water: 'deionised',
      metalGroup: 'silver',
      events: [
        { type: 'mixed', at: 5, strength: 60, waterMl: 500, volumeMl: 500, heldMg: {} },
        { type: 'used', at: 9, job: '', chargeAh: 0.4, tookMg: { Ag: 60 } },
        { type: 'handed-over', at: 9, to: '' },
      ],
    },
  },
};

const all = Object.values(sequences).flatMap((sequence) =>
  sequence.migrations.map((migration) => ({ sequence, migration })),
);

describe('the migrations of the notebook', () => {
  test('give back a bath that adds up to what it was', () => {
    const read = readBath(cases['bath/1']?.before);
    if (isUnreadable(read)) throw new Error(read.why);
    expect(bathNow(read)).toMatchObject({
      chargeAh: 0.4,
      dissolved: { Ag: 120 },
      strength: 60,
      where: 'handed-over',
      madeAt: 5,
      lastUsedAt: 9,
    });
  });
  test('are each exercised by a case, and no case is without its migration', () => {
    expect(Object.keys(cases).toSorted()).toEqual(all.map(({ migration }) => migration.id).toSorted());
  });
  test('lead to the version that is written', () => {
    expect(Object.values(sequences).map(({ latest }) => latest)).toEqual([
      jobVersion,
      bathVersion,
      preferencesVersion,
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
