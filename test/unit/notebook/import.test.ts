import { describe, expect, test } from 'vitest';
import { notebookFileName } from '$lib/notebook/export.ts';
import { dryRun, isBadFile } from '$lib/notebook/import.ts';
import type { DryRun } from '$lib/notebook/import.ts';
import { unboxed } from '$lib/notebook/boxed.ts';
import { toWrite as boxedToWrite } from '$lib/notebook/import-choices.ts';
import type { Choices } from '$lib/notebook/import-choices.ts';
import { sha256Of } from '$lib/notebook/sha256.ts';
import { isPowered } from '$lib/session/powered.ts';
import type { Everything } from '$lib/notebook/store.ts';
import { asBytes, linesFor, nothing, ownOf, picture, wholeFile } from './in-memory.ts';
import { aBath, aJob, running, somePreferences } from './records-for-test.ts';

/** What is to be written, jobs taken out of their boxes. */
const toWrite = (run: DryRun, chosen: Choices, newId: () => string): Everything => {
  const all = boxedToWrite(run, chosen, newId, isPowered);
  return { ...all, jobs: all.jobs.map(unboxed) };
};

const taken = { ...nothing, takenIn: [] };

async function readLines(lines: readonly string[], own: Partial<Everything> = {}): Promise<DryRun> {
  const run = await dryRun(asBytes(lines), ownOf(own));
  if (isBadFile(run)) throw new Error(`not taken: ${run.found}`);
  return run;
}

const read = async (all: Partial<Everything>, own: Partial<Everything> = {}): Promise<DryRun> =>
  readLines(await linesFor(all), own);

const choices = (all: Choices['jobs'], preferences: Choices['preferences'] = 'mine'): Choices => ({
  jobs: all,
  baths: all,
  preferences,
});

const odd = { id: 'odd', version: 9, more: [1] };

describe('a file that is no notebook', () => {
  test.each([
    ['', /^no JSON/, /notebook file/],
    ['{"etchwright":1}', /job file/, /notebook file/],
    ['{"etchwrightNotebook":3}', /version 3/, /version 1 to 2/],
    ['[]', /another kind/, /notebook file/],
    ['{}', /without the mark/, /notebook file/],
    [
      '{"etchwrightNotebook":1,"appVersion":"1","savedAt":"then","jobs":[],"baths":[]}',
      /^savedAt: "then"/,
      /^savedAt: number/,
    ],
    [
      '{"etchwrightNotebook":1,"appVersion":"1","savedAt":1,"jobs":{},"baths":[]}',
      /^jobs: Object/,
      /^jobs: Array/,
    ],
  ])('%j says what was found and what was expected', async (text, found, expected) => {
    expect(await dryRun(asBytes(text.split('\n')), ownOf())).toEqual({
      found: expect.stringMatching(found) as string,
      expected: expect.stringMatching(expected) as string,
    });
  });
});

describe('a file that changed on its way', () => {
  const bytes = picture(1, 2);
  const saved = sha256Of(bytes).then((id) =>
    linesFor({ jobs: [aJob('a'), aJob('b')], baths: [aBath('x')], photos: [{ id, bytes }] }),
  );
  const fault = async (change: (lines: string[]) => readonly string[]) => {
    const run = await dryRun(asBytes(change([...(await saved)])), ownOf());
    return isBadFile(run) ? run.found : null;
  };

  test('is taken as it was saved', async () => {
    expect(await fault((lines) => lines)).toBeNull();
  });
  test('tells the line whose hash does not fit: one letter is enough', async () => {
    expect(
      await fault(([head = '', job = '', ...rest]) => [head, job.replace('Job a', 'Job o'), ...rest]),
    ).toBe('line 2 changed on its way: its content and its hash differ');
    expect(
      await fault(([head = '', ...rest]) => [head.replace('"savedAt":5', '"savedAt":6'), ...rest]),
    ).toMatch(/^line 1 changed/);
  });
  test('misses a line that is gone, and the end', async () => {
    expect(await fault((lines) => lines.filter((_, n) => n !== 1))).toBe('1 jobs');
    expect(await fault((lines) => lines.slice(0, -1))).toMatch(/cut short/);
    expect(await fault((lines) => lines.slice(1))).toMatch(/^line 1: job/);
    expect(await fault((lines) => [...lines, lines[1] ?? ''])).toMatch(/^line 7: job/);
  });
  test('takes no picture under another name, and nothing else as a picture', async () => {
    const other = await linesFor({ photos: [{ id: await sha256Of(bytes), bytes: picture(9) }] });
    const run = await dryRun(asBytes(other), ownOf());
    expect(run).toMatchObject({ found: expect.stringMatching(/no picture of its name/) as string });
    const page = new TextEncoder().encode('<svg onload="alert(1)"/>');
    const script = await linesFor({ photos: [{ id: await sha256Of(page), bytes: page }] });
    expect(await dryRun(asBytes(script), ownOf())).toMatchObject({
      found: expect.stringMatching(/no picture/) as string,
    });
  });
});

describe('a dry run', () => {
  const own = { jobs: [aJob('a'), aJob('b')], baths: [aBath('x')], preferences: somePreferences };

  test('counts what is new, the same and in conflict', async () => {
    const theirs = {
      jobs: [aJob('a'), aJob('b', { at: 'depth' }), aJob('c')],
      baths: [aBath('x', { water: 'rain' }), aBath('y')],
      preferences: { ...somePreferences, country: 'US' },
    };
    const run = await read(theirs, own);
    expect(run.jobs.fresh.map(({ id }) => id)).toEqual(['c']);
    expect(run.jobs.same).toBe(1);
    expect(run.jobs.conflicts.map(({ theirs: { at } }) => at)).toEqual(['depth']);
    expect([run.baths.fresh.length, run.baths.same, run.baths.conflicts.length]).toEqual([1, 0, 1]);
    expect(run.preferences.conflicts).toHaveLength(1);
  });
  test('takes the order of keys for nothing', async () => {
    const turned = Object.fromEntries(Object.entries(aJob('a')).reverse());
    expect((await read({ jobs: [turned] }, own)).jobs.same).toBe(1);
  });
  test('of the file that was just saved adds nothing, whatever its version', async () => {
    const all = { ...own, jobs: [...own.jobs, odd] };
    const first = await readLines([wholeFile(all)], all);
    expect(toWrite(first, choices('theirs', 'theirs'), () => 'n')).toEqual(taken);
    const run = await read(all, all);
    expect(toWrite(run, choices('theirs', 'theirs'), () => 'n')).toEqual(taken);
    expect(run.leftOut).toBe(0);
  });
  test('carries what cannot be read into an empty notebook as it stands', async () => {
    const run = await read({ jobs: [odd], baths: [odd] });
    expect(toWrite(run, choices('mine'), () => 'n')).toEqual({ ...taken, jobs: [odd], baths: [odd] });
  });
  test('leaves out what cannot be read and has no place, and says so', async () => {
    const other = { ...odd, more: [2] };
    expect(await read({ jobs: [other, 'x', {}] }, { jobs: [odd] })).toMatchObject({
      rawJobs: [],
      leftOut: 3,
    });
  });
  test('takes one record of a name, and leaves a second of it out', async () => {
    const run = await read({ jobs: [aJob('a'), aJob('a', { at: 'depth' })] });
    expect(run.jobs.fresh.map(unboxed)).toEqual([aJob('a')]);
    expect(run.leftOut).toBe(1);
  });
  test('never pushes out a record here that cannot be read', async () => {
    const run = await read({ jobs: [aJob('odd')] }, { jobs: [odd] });
    expect(run.jobs.fresh).toEqual([]);
    expect(run.leftOut).toBe(1);
  });
});

describe('a conflict', () => {
  const mine = aJob('a');
  const theirs = aJob('a', { at: 'depth', draft: { title: 'Cuff', 'bath.record': 'SILVER 1' } });
  const held = read(
    { jobs: [theirs], baths: [aBath('x', { water: 'rain' })] },
    { jobs: [mine], baths: [aBath('x')] },
  );

  test('kept mine writes nothing', async () => {
    expect(toWrite(await held, choices('mine'), () => 'n')).toEqual(taken);
  });
  test('taken theirs writes theirs, marked as come from a file', async () => {
    const written = toWrite(await held, choices('theirs'), () => 'n');
    expect(written.jobs).toEqual([theirs]);
    expect(written.takenIn).toEqual(['a']);
  });
  test('kept both stands beside, and its bath goes along', async () => {
    let n = 0;
    const { jobs, baths } = toWrite(await held, choices('both'), () => `new-${(n += 1)}`);
    expect(baths).toMatchObject([{ id: 'new-1', name: 'SILVER 1 (from file)' }]);
    expect(jobs).toMatchObject([
      { id: 'new-2', draft: { title: 'Cuff (from file)', 'bath.record': 'SILVER 1 (from file)' } },
    ]);
  });
  test('never writes over a job whose supply may be on', async () => {
    const live = await read({ jobs: [theirs] }, { jobs: [aJob('a', { snapshot: running })] });
    expect(toWrite(live, choices('theirs'), () => 'new').jobs).toMatchObject([{ id: 'new' }]);
    expect(toWrite(live, choices('mine'), () => 'new').jobs).toEqual([]);
  });
  test('of preferences is taken only when chosen', async () => {
    const prefs = await read(
      { preferences: { ...somePreferences, paper: 'Letter' } },
      { preferences: somePreferences },
    );
    expect(toWrite(prefs, choices('mine'), () => 'n').preferences).toBeUndefined();
    expect(toWrite(prefs, choices('mine', 'theirs'), () => 'n').preferences).toMatchObject({
      paper: 'Letter',
    });
  });
});

test('the file is named by the day', () => {
  expect(notebookFileName(new Date(2026, 2, 5))).toBe('etchwright-notebook-2026-03-05.txt');
});
