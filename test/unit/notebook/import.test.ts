import { describe, expect, test } from 'vitest';
import { notebookFile, notebookFileName } from '$lib/notebook/export.ts';
import { dryRun, isBadFile, MOST_BYTES } from '$lib/notebook/import.ts';
import type { DryRun } from '$lib/notebook/import.ts';
import { toWrite } from '$lib/notebook/import-choices.ts';
import type { Choices } from '$lib/notebook/import-choices.ts';
import type { Everything } from '$lib/notebook/store.ts';
import { aBath, aJob, running, somePreferences } from './records-for-test.ts';

const nothing: Everything = { jobs: [], baths: [], preferences: undefined };
const file = (all: Partial<Everything>): string => notebookFile({ ...nothing, ...all }, '0.1.0', 5);

function read(text: string, own: Partial<Everything> = {}): DryRun {
  const run = dryRun(text, text.length, { ...nothing, ...own });
  if (isBadFile(run)) throw new Error(`not taken: ${run.found}`);
  return run;
}

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
    ['{"etchwrightNotebook":2}', /version 2/, /version 1/],
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
  ])('%j says what was found and what was expected', (text, found, expected) => {
    const run = dryRun(text, text.length, nothing);
    expect(run).toEqual({
      found: expect.stringMatching(found) as string,
      expected: expect.stringMatching(expected) as string,
    });
  });
  test('is refused by its size before it is read', () => {
    expect(dryRun('{', MOST_BYTES + 1, nothing)).toEqual({
      found: 'a file of 21 MB',
      expected: 'at most 20 MB',
    });
  });
});

describe('a dry run', () => {
  const own = { jobs: [aJob('a'), aJob('b')], baths: [aBath('x')], preferences: somePreferences };

  test('counts what is new, the same and in conflict', () => {
    const theirs = file({
      jobs: [aJob('a'), aJob('b', { at: 'depth' }), aJob('c')],
      baths: [aBath('x', { water: 'rain' }), aBath('y')],
      preferences: { ...somePreferences, country: 'US' },
    });
    const run = read(theirs, own);
    expect(run.jobs.fresh.map(({ id }) => id)).toEqual(['c']);
    expect(run.jobs.same).toBe(1);
    expect(run.jobs.conflicts.map(({ theirs: { at } }) => at)).toEqual(['depth']);
    expect([run.baths.fresh.length, run.baths.same, run.baths.conflicts.length]).toEqual([1, 0, 1]);
    expect(run.preferences.conflicts).toHaveLength(1);
  });
  test('takes the order of keys for nothing', () => {
    const turned = Object.fromEntries(Object.entries(aJob('a')).reverse());
    expect(read(file({ jobs: [turned] }), own).jobs.same).toBe(1);
  });
  test('of the file that was just saved adds nothing', () => {
    const all = { ...own, jobs: [...own.jobs, odd] };
    const run = read(file(all), all);
    expect(toWrite(run, choices('theirs', 'theirs'), () => 'n')).toEqual(nothing);
    expect(run.leftOut).toBe(0);
  });
  test('carries what cannot be read into an empty notebook as it stands', () => {
    const run = read(file({ jobs: [odd], baths: [odd] }));
    expect(toWrite(run, choices('mine'), () => 'n')).toEqual({ ...nothing, jobs: [odd], baths: [odd] });
  });
  test('leaves out what cannot be read and has no place, and says so', () => {
    const other = { ...odd, more: [2] };
    expect(read(file({ jobs: [other, 'x', {}] }), { jobs: [odd] })).toMatchObject({
      rawJobs: [],
      leftOut: 3,
    });
  });
  test('never pushes out a record here that cannot be read', () => {
    const run = read(file({ jobs: [aJob('odd')] }), { jobs: [odd] });
    expect(run.jobs.fresh).toEqual([]);
    expect(run.leftOut).toBe(1);
  });
});

describe('a conflict', () => {
  const mine = aJob('a');
  const theirs = aJob('a', { at: 'depth', draft: { title: 'Cuff', 'bath.record': 'SILVER 1' } });
  const run = read(file({ jobs: [theirs], baths: [aBath('x', { water: 'rain' })] }), {
    jobs: [mine],
    baths: [aBath('x')],
  });

  test('kept mine writes nothing', () => {
    expect(toWrite(run, choices('mine'), () => 'n')).toEqual(nothing);
  });
  test('taken theirs writes theirs', () => {
    expect(toWrite(run, choices('theirs'), () => 'n').jobs).toEqual([theirs]);
  });
  test('kept both stands beside, and its bath goes along', () => {
    let n = 0;
    const { jobs, baths } = toWrite(run, choices('both'), () => `new-${(n += 1)}`);
    expect(baths).toMatchObject([{ id: 'new-1', name: 'SILVER 1 (from file)' }]);
    expect(jobs).toMatchObject([
      { id: 'new-2', draft: { title: 'Cuff (from file)', 'bath.record': 'SILVER 1 (from file)' } },
    ]);
  });
  test('never writes over a job whose supply may be on', () => {
    const live = read(file({ jobs: [theirs] }), { jobs: [aJob('a', { snapshot: running })] });
    expect(toWrite(live, choices('theirs'), () => 'new').jobs).toMatchObject([{ id: 'new' }]);
    expect(toWrite(live, choices('mine'), () => 'new').jobs).toEqual([]);
  });
  test('of preferences is taken only when chosen', () => {
    const prefs = read(file({ preferences: { ...somePreferences, paper: 'Letter' } }), {
      preferences: somePreferences,
    });
    expect(toWrite(prefs, choices('mine'), () => 'n').preferences).toBeUndefined();
    expect(toWrite(prefs, choices('mine', 'theirs'), () => 'n').preferences).toMatchObject({
      paper: 'Letter',
    });
  });
});

test('the file is named by the day', () => {
  expect(notebookFileName(new Date(2026, 2, 5))).toBe('etchwright-notebook-2026-03-05.json');
});
