import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { notebookFile } from '../../src/lib/notebook/export.ts';
import { dryRun, isBadFile } from '../../src/lib/notebook/import.ts';
import { toWrite } from '../../src/lib/notebook/import-choices.ts';
import type { Everything } from '../../src/lib/notebook/store.ts';
import { aBath, aJob, somePreferences } from '../unit/notebook/records-for-test.ts';
import { chunk } from './runs.ts';
import { uniforms } from '../fixtures/simulated-runs.ts';

const nothing: Everything = { jobs: [], baths: [], preferences: undefined };
const number = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }).map((one) => one + 0);
const maybe = fc.option(number, { nil: null });
const time = fc.integer({ min: 0, max: 2e12 });
const word = fc.string({ maxLength: 20, unit: 'grapheme' });

const job = fc
  .record({
    title: word,
    note: word,
    updatedAt: time,
    readings: fc.array(fc.record({ at: time, amps: maybe, volts: maybe, celsius: maybe, note: word }), {
      maxLength: 6,
    }),
    depths: fc.array(number, { maxLength: 4 }),
    events: fc.array(fc.record({ type: word, at: time }), { maxLength: 5 }),
    plan: fc.jsonValue({ maxDepth: 2 }),
  })
  .map(
    ({ title, note, updatedAt, readings, depths, events, plan }) =>
      (id: string) =>
        aJob(id, {
          draft: { title, 'piece.metal': 'C11000' },
          updatedAt,
          readings,
          events,
          planAtStart: plan,
          result: {
            depthUm: depths[0] ?? null,
            depthPointsUm: depths,
            massBeforeG: null,
            massAfterG: null,
            note,
          },
        }),
  );

const notebook = fc
  .record({ jobs: fc.array(job, { maxLength: 6 }), baths: fc.nat(4), prefers: fc.boolean() })
  .map(({ jobs, baths, prefers }): Everything => ({
    jobs: jobs.map((make, n) => make(`job ${String(n)}`)),
    baths: Array.from({ length: baths }, (_, n) => aBath(`bath ${String(n)}`)),
    preferences: prefers ? somePreferences : undefined,
  }));

/** As JSON has it: a minus before nothing is lost there. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value ?? null));

test('saved, wiped and taken in again a notebook is what it was: 300 random ones', () => {
  fc.assert(
    fc.property(notebook, (own) => {
      const text = notebookFile(own, '0.1.0', 5);
      const run = dryRun(text, text.length, nothing);
      if (isBadFile(run)) throw new Error(run.found);
      const written = toWrite(run, { jobs: 'both', baths: 'both', preferences: 'theirs' }, () => 'new');
      expect(plain(written.jobs)).toEqual(plain(own.jobs));
      expect(plain(written.baths)).toEqual(plain(own.baths));
      expect(plain(written.preferences)).toEqual(plain(own.preferences));
      // a second time adds nothing
      const again = dryRun(text, text.length, own);
      expect(isBadFile(again) ? null : [again.jobs.fresh, again.jobs.conflicts, again.baths.fresh]).toEqual([
        [],
        [],
        [],
      ]);
    }),
    chunk(300),
  );
});

describe('a hundred thousand spoilt files', () => {
  const text = notebookFile(
    { jobs: [aJob('a'), aJob('b')], baths: [aBath('x')], preferences: somePreferences },
    '0.1.0',
    5,
  );
  const own: Everything = { jobs: [aJob('a')], baths: [], preferences: undefined };
  const before = JSON.stringify(own);
  const letters = '{}[]",:0123456789.-etchwrigNulfa \\\u0000\ud800é';
  test('each is refused once, clearly, or read as it is; nothing here is touched', () => {
    const random = uniforms(2026);
    const upTo = (most: number): number => Math.floor(random() * most);
    let refused = 0;
    for (let n = 0; n < 100_000; n += 1) {
      let spoilt = text;
      for (let edits = 1 + upTo(3); edits > 0; edits -= 1) {
        const at = upTo(spoilt.length);
        const kind = upTo(4);
        const letter = letters[upTo(letters.length)] ?? '';
        if (kind === 0) spoilt = spoilt.slice(0, at) + spoilt.slice(at + 1 + upTo(40));
        else if (kind === 1) spoilt = spoilt.slice(0, at) + letter + spoilt.slice(at);
        else if (kind === 2) spoilt = spoilt.slice(0, at) + letter + spoilt.slice(at + 1);
        else spoilt = spoilt.slice(0, at);
      }
      const run = dryRun(spoilt, spoilt.length, own);
      if (!isBadFile(run)) continue;
      refused += 1;
      if (run.found === '' || run.expected === '') throw new Error(`no reason given for ${spoilt}`);
    }
    expect(refused).toBeGreaterThan(50_000);
    expect(JSON.stringify(own)).toBe(before);
  }, 120_000);
});
