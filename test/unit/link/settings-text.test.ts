import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atomicWeights } from '../../../src/lib/core/facts/elements.ts';
import { boughtSaltIds, refusedSalts } from '../../../src/lib/core/facts/salts.ts';
import type { JobInput } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { readSettings, settingsText } from '../../../src/lib/link/settings-text.ts';
import * as numbers from '../../../src/lib/link/word-numbers.ts';
import { cuff, jobOf, patched, pendant, tokens } from '../../fixtures/jobs.ts';

function read(text: string): JobInput {
  const found = readSettings(text);
  if ('fault' in found) throw new Error(found.fault);
  return found.job;
}

/** What a plan shows but for what is the maker's own. */
const shownOf = ({ title: _title, place: _place, paper: _paper, ...job }: JobInput) => ({
  ...job,
  bath: { ...job.bath, record: null },
});

const cases = [
  ['pendant', pendant()],
  ['cuff', cuff()],
  ['tokens', tokens()],
  [
    'disc in a round tub',
    patched(pendant(), {
      'piece.shape': 'disc',
      'piece.width': undefined,
      'piece.height': undefined,
      'piece.diameter': { value: 1.25, unit: 'in' },
      'piece.openArea': undefined,
      'piece.openShare': 0.35,
      tub: { diameter: { value: 95, unit: 'mm' }, fill: { value: 70.5, unit: 'mm' } },
    }),
  ],
  [
    'jug, shifted piece, measured leads, bath that held metal',
    patched(pendant(), {
      tub: { waterByJug: { value: 750, unit: 'mL' } },
      'bath.temperature': { value: 22.5, unit: 'degC' },
      'bath.dissolved': { Ag: { value: 702, unit: 'mg/L' }, Cu: { value: 56.9, unit: 'mg/L' } },
      'bath.chargePassed': { value: 0.134, unit: 'A.h' },
      'bath.record': 'SILVER 1',
      'supply.leads': { value: 0.04, unit: 'ohm' },
      'piece.attached': ['stones', 'hinges'],
      hanger: 'tab',
      'supply.showsAmps': false,
      'supply.maxAmps': undefined,
    }),
  ],
] as const;

describe.each(cases)('%s', (_name, raw) => {
  const job = jobOf(raw);
  const text = settingsText(job);

  test('comes back as the same settings, to six digits', () => {
    const flat = (of: JobInput): unknown =>
      JSON.parse(
        JSON.stringify(shownOf(of), (_, value: unknown) =>
          typeof value === 'number' ? Number(value.toPrecision(5)) : value,
        ),
      );
    expect(flat(read(text))).toEqual(flat(job));
    expect(settingsText(read(text))).toBe(text);
  });

  test('plans to the same figures', () => {
    const plans = [job, { ...read(text), place: job.place }].map((of) => planJob(of).figures);
    const [typed, carried] = plans.map((figures) =>
      Object.entries(figures).map(([id, { value, low, high, unit: u }]) => [
        id,
        ...[value, low, high].map((n) => n.toPrecision(4)),
        u,
      ]),
    );
    expect(typed?.length).toBeGreaterThan(0);
    expect(carried).toEqual(typed);
  });

  test('is short, and safe in an address', () => {
    expect(text).toMatch(/^1[\w-]+$/);
    expect(text.length).toBeLessThan(90);
  });
});

test('nothing of the maker’s own is in it', () => {
  const own = {
    title: 'For my neighbour',
    place: { use: 'teaching', room: { value: 31, unit: 'm3' }, country: 'NZ' },
    'bath.record': 'SILVER 1',
    paper: 'Letter',
  };
  expect(settingsText(jobOf(patched(pendant(), own)))).toBe(settingsText(jobOf(pendant())));
  const back = read(settingsText(jobOf(patched(pendant(), own))));
  expect(back.title).toBe('From a sheet');
  expect(back.place).toEqual({ use: 'home', room: null, country: null, mayTreat: false });
  expect(back.bath.record).toBeNull();
});

/** Texts as version 1 prints them. Sheets live for years: these must be read for ever. */
test.each([
  ['1BCk5SBC9K4wIAGTlJOAg5wZgZYCWCSCAAAh8HNQggA', pendant],
  ['1Cinxk3wRujeMCACnxlJWAg5gpspcKVaLIIAISFwQPIpz', cuff],
  ['1DRiTOc_4MbWjjGCAEeO83j_F894CDeO847zf-kgJgSkggBgYgb-O4thMmQ', tokens],
])('%s is still read', (text, raw) => {
  expect(settingsText(jobOf(raw()))).toBe(text);
  expect(read(text).bath.salt).toBe(jobOf(raw()).bath.salt);
  expect(read(text).piece.metal).toBe(jobOf(raw()).piece.metal);
});

test('a bath below zero keeps its sign', () => {
  const cold = jobOf(patched(pendant(), { 'bath.temperature': { value: -1.5, unit: 'degC' } }));
  expect(read(settingsText(cold)).bath.temperature).toBeCloseTo(271.65, 9);
});

describe('what comes from outside', () => {
  const text = settingsText(jobOf(pendant()));
  test.each([
    ['', 'foreign'],
    ['1', 'foreign'],
    ['hello', 'foreign'],
    ['<script>', 'foreign'],
    ['1'.repeat(700), 'foreign'],
    [`2${text.slice(1)}`, 'newer'],
    [text.slice(0, -1), 'damaged'],
    [text.slice(0, 12), 'damaged'],
    [`${text}A`, 'damaged'],
  ])('"%s" is refused as %s', (typed, fault) => {
    expect(readSettings(typed)).toEqual({ fault });
  });

  test('one wrong letter anywhere is noticed', () => {
    for (let at = 1; at < text.length; at += 1) {
      const other = text.charAt(at) === 'Q' ? 'R' : 'Q';
      expect(readSettings(text.slice(0, at) + other + text.slice(at + 1)), String(at)).toHaveProperty(
        'fault',
      );
    }
  });

  test('no text makes it throw, and what it takes it writes again', () => {
    const letters = fc.array(fc.constantFrom(...Array.from('ABCXYZabcxyz0189-_')), { maxLength: 80 });
    fc.assert(
      fc.property(letters, (made) => {
        const typed = `1${made.join('')}`;
        const found = readSettings(typed);
        if ('job' in found) expect(settingsText(found.job)).toBe(typed);
        else expect(['foreign', 'newer', 'damaged', 'no-job']).toContain(found.fault);
      }),
      { numRuns: 3000 },
    );
    fc.assert(
      fc.property(fc.string(), (typed) => {
        expect(readSettings(typed)).toHaveProperty('fault');
      }),
    );
  });
});

describe('the numbers of the words', () => {
  test.each(Object.entries(numbers))('%s are each given once and fit', (name, table) => {
    const given = Object.values<number>(table);
    expect(new Set(given).size).toBe(given.length);
    const bits = new Map(
      Object.entries({
        metalNumbers: 6,
        saltNumbers: 6,
        elementNumbers: 5,
        resistNumbers: 5,
        supplyNumbers: 5,
        hangerNumbers: 4,
        attachmentNumbers: 4,
      }),
    );
    expect(Math.max(...given)).toBeLessThan(2 ** (bits.get(name) ?? 2));
  });

  test('cover every salt and element that a job can hold', () => {
    for (const id of [...boughtSaltIds, ...Object.keys(refusedSalts)]) {
      expect(numbers.saltNumbers).toHaveProperty([id]);
    }
    for (const id of Object.keys(atomicWeights)) expect(numbers.elementNumbers).toHaveProperty([id]);
  });
});
