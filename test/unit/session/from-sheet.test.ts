import { jobVersion } from '../../../src/lib/notebook/records.ts';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { jobCode } from '../../../src/lib/link/job-code.ts';
import { shortCode } from '../../../src/lib/link/short-code.ts';
import type { JobRecord } from '../../../src/lib/notebook/records.ts';
import { connectNotebook } from '../../../src/lib/notebook/store.ts';
import type { Notebook } from '../../../src/lib/notebook/store.ts';
import { draftFrom } from '../../../src/lib/session/draft.ts';
import { fromSheet, rememberCode } from '../../../src/lib/session/from-sheet.ts';
import type { FromSheet } from '../../../src/lib/session/from-sheet.ts';
import { jobFileOf, unchosenIn } from '../../../src/lib/session/job-file.ts';
import { textForPapers } from '../../../src/lib/session/job-marks.ts';
import { changePreferences } from '../../../src/lib/session/preferences.ts';
import { settingsLines } from '../../../src/lib/words/en/from-sheet.ts';
import { si } from '../../../src/lib/core/units/quantity.ts';
import { draftOf } from '../../../src/lib/session/jobs-from-plan.ts';
import { paperOfRegion } from '../../../src/lib/session/paper-size.ts';
import { amount, cuff, jobOf, patched, pendant, refusedBy, tokens } from '../../fixtures/jobs.ts';

const record = (id: string, draft: Readonly<Record<string, string>>): JobRecord => ({
  version: jobVersion,
  id,
  createdAt: 1,
  updatedAt: 1,
  appVersion: '0.1.0',
  draft: { ...draft },
  at: '',
  procedureVersion: 1,
  snapshot: null,
  events: [],
  planAtStart: null,
  readings: [],
  result: null,
});

const textOfDraft = (draft: Readonly<Record<string, string>>): string => {
  const parsed = parseJob(jobFileOf(draftFrom(draft)), { areaLater: true });
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return jobCode(parsed.job);
};

let book: Notebook;
beforeEach(async () => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  vi.stubGlobal('navigator', { languages: ['en-GB'] });
  book = await connectNotebook();
});

const found = async (typed: string): Promise<FromSheet> => {
  const looked = await fromSheet(book, typed);
  if ('fault' in looked) throw new Error(looked.fault);
  return looked;
};

const own = {
  ...draftOf(jobOf(pendant())),
  title: 'Her pendant',
  hanger: 'tab',
  'place.country': 'NZ',
  'place.room': '31',
};

describe('a code', () => {
  const text = textOfDraft(own);
  const code = shortCode(text);

  test('finds the job in this notebook, with all that only this notebook knows', async () => {
    await book.saveJob(record('a', draftOf(jobOf(tokens()))), 'relaxed');
    await book.saveJob(record('b', own), 'relaxed');
    const { draft, here } = await found(code.toLowerCase().replace('-', ' '));
    expect(here).toEqual({ id: 'b', title: 'Her pendant' });
    expect(draft).toEqual(draftFrom(own));
  });

  test('finds a job that its maker reads in inches, and keeps it in inches', async () => {
    const inches = { 'unit.length': 'in', 'piece.width': '1.2', 'piece.height': '1.5', 'tub.fill': '2.4' };
    const stored = { ...own, ...inches, 'cathode.gap': '1.18', 'tub.length': '5', 'tub.width': '4' };
    const printed = textOfDraft(stored);
    await book.saveJob(record('b', { ...stored, 'piece.depth': '0.2' }), 'relaxed');
    await rememberCode(book, shortCode(printed), { id: 'b', text: printed });
    const { draft } = await found(shortCode(printed));
    expect(draft).toMatchObject({
      ...inches,
      'cathode.gap': '1.18',
      'piece.depth': '0.00393701',
      'piece.depth.unit': 'in',
      'piece.thickness.unit': 'in',
      'place.country': 'NZ',
    });
    expect(textOfDraft(draft)).toBe(printed);
  });

  test('that was printed finds the settings as printed after the job has changed', async () => {
    await book.saveJob(record('b', { ...own, 'piece.depth': '0.2' }), 'relaxed');
    expect(await fromSheet(book, code)).toEqual({ fault: 'not-here' });
    await rememberCode(book, code, { id: 'b', text });
    const { draft, here } = await found(code);
    expect(here?.id).toBe('b');
    expect(draft['piece.depth']).toBe('0.1');
    expect(draft.title).toBe('Her pendant');
    expect(textOfDraft(draft)).toBe(text);
  });

  test('of a label printed before the bare metal was measured leads to the job as its sheet does', async () => {
    const later = textOfDraft({ ...own, 'piece.area': 'later' });
    expect(later).not.toBe(text);
    await book.saveJob(record('b', own), 'relaxed');
    await rememberCode(book, shortCode(later), { id: 'b', text: later });
    expect((await found(shortCode(later))).draft).toEqual((await found(code)).draft);
  });

  test('of a job that was deleted, or of another notebook, finds nothing and says so', async () => {
    await rememberCode(book, code, { id: 'gone', text });
    expect(await fromSheet(book, code)).toEqual({ fault: 'not-here' });
  });

  test('with a wrong letter is told from one that is elsewhere', async () => {
    const wrong = (code.startsWith('X') ? 'Y' : 'X') + code.slice(1);
    expect(await fromSheet(book, wrong)).toEqual({ fault: 'mistyped' });
  });
});

describe('settings that a sheet carried', () => {
  test.each(['', '#start=', 'https://bench.example/tools/#start='])(
    'after "%s" make the same job without what was the other maker’s own',
    async (before) => {
      const { draft, here } = await found(` ${before}${textOfDraft(own)}\n`);
      expect(here).toBeNull();
      expect(textOfDraft(draft)).toBe(textOfDraft(own));
      expect(draft.title).toBe('From a sheet');
      expect([draft['place.country'], draft['place.room'], draft['place.use']]).toEqual(['', '20', 'home']);
    },
  );

  test('of a job refused for mixed metals come back refused', async () => {
    const mixed = jobOf(
      patched(cuff(), {
        'bath.dissolved': { Ag: amount(702, 'mg/L') },
        'bath.chargePassed': amount(0.3, 'A.h'),
        'bath.record': 'SILVER 1',
      }),
    );
    expect(refusedBy(planJob(mixed))).toContain('mixed-metals');
    const { draft } = await found(jobCode(mixed));
    expect(draft).toMatchObject({ 'bath.from': 'shelf', 'bath.record': '', 'bath.dissolved': '{"Ag":702}' });
    const again = jobOf(jobFileOf(draft));
    expect(refusedBy(planJob(again))).toEqual(refusedBy(planJob(mixed)));
    expect(again.bath.chargePassed).toBeCloseTo(mixed.bath.chargePassed, 6);
  });

  test('bring what no screen asks: how the plate hangs, where the piece is, the leads, amps held', async () => {
    const odd = jobOf(
      patched(tokens(), {
        'cathode.sideways': amount(12, 'mm'),
        'cathode.faces': 'front',
        'piece.at': { y: amount(60, 'mm'), z: amount(55, 'mm') },
      }),
    );
    const again = jobOf(jobFileOf((await found(jobCode(odd))).draft));
    expect(again.cathode).toMatchObject({ faces: 'front', sideways: odd.cathode.sideways });
    expect(again.piece.at).toEqual(odd.piece.at);
    expect(again.supply).toEqual(odd.supply);
  });

  test('that are none are refused', async () => {
    expect(await fromSheet(book, '#start=')).toEqual({ fault: 'foreign' });
    expect(await fromSheet(book, 'https://elsewhere.example/')).toEqual({ fault: 'foreign' });
    expect(await fromSheet(book, textOfDraft(own).slice(0, -2))).toEqual({ fault: 'damaged' });
  });
});

describe('a supply that nobody has chosen', () => {
  const open = { ...own, 'supply.kind': '' };
  const plan = planJob(jobOf(jobFileOf(open)));
  const text = textForPapers(open, plan) ?? '';

  test('is carried as such, and reopens unchosen', async () => {
    const chosen = textForPapers({ ...open, 'supply.kind': 'bench' }, plan);
    expect(text).not.toBe(chosen);
    const read = await found(text);
    expect(read.unchosen).toEqual(['supply.kind']);
    expect(read.draft['supply.kind']).toBe('');
    expect(unchosenIn(read.draft)).toHaveLength(1);
    const lines = settingsLines(read.job, read.unchosen);
    expect(lines.at(-1)).toBe('Supply not chosen yet');
    expect(lines.join(' ')).not.toMatch(/\dV|\d\s?A\b/);
    // a chosen one is, of the same job
    expect((await found(chosen ?? '')).unchosen).toEqual([]);
  });

  test('is found again by the code of the label, in the notebook that printed it', async () => {
    await book.saveJob(record('b', open), 'relaxed');
    const { draft, here } = await found(shortCode(text));
    expect(here?.id).toBe('b');
    expect(draft['supply.kind']).toBe('');
    // and as printed, once it has been chosen
    await rememberCode(book, shortCode(text), { id: 'b', text });
    await book.saveJob(record('b', { ...open, 'supply.kind': 'adapter', 'supply.volts': '5' }), 'relaxed');
    expect((await found(shortCode(text))).draft['supply.kind']).toBe('');
  });
});

test('volts that stand on a supply with knobs before anybody typed are nobody’s answer', () => {
  const bench = jobOf(
    jobFileOf({ ...own, 'supply.kind': 'bench', 'supply.control': 'volts', 'supply.volts': '7' }),
  );
  expect(settingsLines(bench).at(-1)).toMatch(/^Bench supply, 3\s?A at most$/);
  const adapter = {
    'supply.kind': 'adapter',
    'supply.volts': '5',
    'supply.maxAmps': '',
    'supply.amps': 'no',
  };
  const fixed = jobOf(jobFileOf({ ...own, 'supply.control': 'volts', ...adapter }));
  expect(settingsLines(fixed).at(-1)).toMatch(/^Plug-in adapter, 5\s?V$/);
});

test('label and sheet of one job carry one text, whatever the plan proposes to set', () => {
  const job = jobOf(jobFileOf(own));
  const atMixing = planJob(job);
  const atStart = planJob({
    ...job,
    supply: { ...job.supply, control: 'volts', volts: si(2.9), maxAmps: null },
  });
  expect(atStart.job.supply).not.toEqual(atMixing.job.supply);
  expect(textForPapers(own, atMixing)).toBe(textForPapers(own, atStart));
});

test('the supply of this workshop comes whole, with nothing of how the sheet’s was set', async () => {
  const workshop = {
    'workshop.known': 'yes',
    'supply.kind': 'adapter',
    'supply.amps': 'no',
    'supply.volts': '5',
    'supply.maxAmps': '2',
    scale: '1',
  };
  await changePreferences(book, { workshop });
  const held = jobCode(jobOf(tokens()));
  const { draft, job } = await found(held);
  expect(job.supply.control).toBe('amps');
  expect(draft).toMatchObject(workshop);
  expect(jobOf(jobFileOf(draft)).supply).toMatchObject({
    kind: 'adapter',
    control: 'volts',
    volts: 5,
    maxAmps: 2,
  });
});

test.each([
  [['en-US', 'en'], 'Letter'],
  [['fr-CA'], 'Letter'],
  [['en-GB', 'en-US'], 'A4'],
  [['de', 'de-AT'], 'A4'],
  [['zh-Hant-TW'], 'A4'],
  [['es-419', 'es-MX'], 'Letter'],
  [['en'], 'A4'],
  [[], 'A4'],
] as const)('paper for %s is %s', (languages, paper) => {
  expect(paperOfRegion(languages)).toBe(paper);
});
