import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unboxed } from '../../src/lib/notebook/boxed.ts';
import { dryRun, isBadFile } from '../../src/lib/notebook/import.ts';
import { toWrite } from '../../src/lib/notebook/import-choices.ts';
import type { StoredPhoto } from '../../src/lib/notebook/photo-store.ts';
import { photosIn } from '../../src/lib/notebook/read-file.ts';
import { sha256Of } from '../../src/lib/notebook/sha256.ts';
import type { Everything } from '../../src/lib/notebook/store.ts';
import { isPowered } from '../../src/lib/session/powered.ts';
import { asBytes, linesFor, nothing, ownOf, picture, wholeFile } from '../unit/notebook/in-memory.ts';
import { aBath, aJob, somePreferences } from '../unit/notebook/records-for-test.ts';
import { chunk, thoroughness } from './runs.ts';
import { uniforms } from '../fixtures/simulated-runs.ts';

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
  .record({
    jobs: fc.array(job, { maxLength: 6 }),
    baths: fc.nat(4),
    prefers: fc.boolean(),
    pictures: fc.array(fc.uint8Array({ maxLength: 300 }), { maxLength: 3 }),
  })
  .map(({ jobs, baths, prefers, pictures }): Everything & { photos: Promise<StoredPhoto[]> } => ({
    photos: Promise.all(
      pictures.map(async (rest, n) => {
        const bytes = picture(n, ...rest);
        return { id: await sha256Of(bytes), bytes };
      }),
    ),
    jobs: jobs.map((make, n) => make(`job ${String(n)}`)),
    baths: Array.from({ length: baths }, (_, n) => aBath(`bath ${String(n)}`)),
    preferences: prefers ? somePreferences : undefined,
  }));

/** As JSON has it: a minus before nothing is lost there. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value ?? null));

test('saved, wiped and taken in again a notebook is what it was, pictures included', async () => {
  await fc.assert(
    fc.asyncProperty(notebook, async (own) => {
      const pictures = await own.photos;
      const lines = asBytes(await linesFor({ ...own, photos: pictures }));
      const run = await dryRun(lines, ownOf());
      if (isBadFile(run)) throw new Error(run.found);
      const written = toWrite(
        run,
        { jobs: 'both', baths: 'both', preferences: 'theirs' },
        () => 'new',
        isPowered,
      );
      expect(plain(written.jobs.map(unboxed))).toEqual(plain(own.jobs));
      expect(plain(written.baths)).toEqual(plain(own.baths));
      expect(plain(written.preferences)).toEqual(plain(own.preferences));
      const photos: StoredPhoto[] = [];
      for await (const photo of photosIn(lines, run.photos.fresh)) photos.push(photo);
      expect(photos).toEqual(pictures);
      // a second time adds nothing
      const again = await dryRun(
        lines,
        ownOf(
          own,
          photos.map(({ id }) => id),
        ),
      );
      if (isBadFile(again)) throw new Error(again.found);
      expect(
        toWrite(again, { jobs: 'both', baths: 'both', preferences: 'theirs' }, () => 'new', isPowered),
      ).toEqual({
        ...nothing,
        takenIn: [],
      });
      expect(again.photos.fresh.size).toBe(0);
    }),
    chunk(100),
  );
});

/** A text with a few letters lost, added, turned or cut off. */
function spoil(text: string, random: () => number): string {
  const letters = '{}[]",:0123456789.-etchwrigNulfa \\\u0000\ud800é\n';
  const upTo = (most: number): number => Math.floor(random() * most);
  let spoilt = text;
  for (let edits = 1 + upTo(3); edits > 0; edits -= 1) {
    const at = upTo(spoilt.length);
    const letter = letters[upTo(letters.length)] ?? '';
    const [before, after] = [spoilt.slice(0, at), spoilt.slice(at)];
    spoilt = [
      before + after.slice(1 + upTo(40)),
      before + letter + after,
      before + letter + after.slice(1),
      before,
    ][upTo(4)] as string;
  }
  return spoilt;
}

const SPOILT = 10_000 * thoroughness;
/** Of the first version, which nobody writes any more. */
const OLD = 2000 * thoroughness;

describe('spoilt files', () => {
  const bytes = picture(1, 2, 3);
  const saved = sha256Of(bytes).then((id) =>
    linesFor({
      jobs: [aJob('a'), aJob('b')],
      baths: [aBath('x')],
      preferences: somePreferences,
      photos: [{ id, bytes }],
    }),
  );
  const own: Everything = { jobs: [aJob('a')], baths: [], preferences: undefined };
  const before = JSON.stringify(own);

  test('are refused once each, clearly, and nothing here is touched', async () => {
    const text = (await saved).join('\n');
    const random = uniforms(2026);
    let [refused, unharmed] = [0, 0];
    for (let n = 0; n < SPOILT; n += 1) {
      const spoilt = spoil(text, random);
      const run = await dryRun(asBytes(spoilt.split('\n')), ownOf(own));
      if (isBadFile(run)) {
        refused += 1;
        if (run.found === '' || run.expected === '') throw new Error(`no reason given for ${spoilt}`);
      } else if (spoilt.trimEnd() === text) unharmed += 1;
      else throw new Error(`taken, though spoilt: ${spoilt}`);
    }
    // a letter may be put where it stood before, and a line may be ended twice
    expect(refused + unharmed).toBe(SPOILT);
    expect(refused).toBeGreaterThan(0.99 * SPOILT);
    expect(JSON.stringify(own)).toBe(before);
  });
  test('of the first version are refused, or read as they are', async () => {
    const text = wholeFile({
      jobs: [aJob('a'), aJob('b')],
      baths: [aBath('x')],
      preferences: somePreferences,
    });
    const random = uniforms(7);
    let refused = 0;
    for (let n = 0; n < OLD; n += 1) {
      const run = await dryRun(asBytes(spoil(text, random).split('\n')), ownOf(own));
      if (!isBadFile(run)) continue;
      refused += 1;
      if (run.found === '' || run.expected === '') throw new Error('no reason given');
    }
    expect(refused).toBeGreaterThan(0.5 * OLD);
    expect(JSON.stringify(own)).toBe(before);
  });
});
