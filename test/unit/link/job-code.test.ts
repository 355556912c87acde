import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atomicWeights } from '../../../src/lib/core/facts/elements.ts';
import { boughtSaltIds, refusedSalts } from '../../../src/lib/core/facts/salts.ts';
import { elementIds, saltIds } from '../../../src/lib/core/job/choices.ts';
import { fieldRows } from '../../../src/lib/core/job/fields.ts';
import type { JobPath } from '../../../src/lib/core/job/fields.ts';
import type { JobInput } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { readJobCode, jobCode } from '../../../src/lib/link/job-code.ts';
import { cuff, jobOf, patched, pendant, tokens } from '../../fixtures/jobs.ts';

function read(text: string): JobInput {
  const found = readJobCode(text);
  if ('fault' in found) throw new Error(found.fault);
  return found.job;
}

/** What a plan shows but for what is the maker's own. */
const shownOf = ({
  title: _title,
  place: _place,
  paper: _paper,
  untyped: _left,
  workshop: _own,
  ...job
}: JobInput) => ({
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
  const text = jobCode(job);

  test('comes back as the same settings, to six digits', () => {
    const flat = (of: JobInput): unknown =>
      JSON.parse(
        JSON.stringify(shownOf(of), (_, value: unknown) =>
          typeof value === 'number' ? Number(value.toPrecision(5)) : value,
        ),
      );
    expect(flat(read(text))).toEqual(flat(job));
    expect(jobCode(read(text))).toBe(text);
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
  expect(jobCode(jobOf(patched(pendant(), own)))).toBe(jobCode(jobOf(pendant())));
  const back = read(jobCode(jobOf(patched(pendant(), own))));
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
  expect(jobCode(jobOf(raw()))).toBe(text);
  expect(read(text).bath.salt).toBe(jobOf(raw()).bath.salt);
  expect(read(text).piece.metal).toBe(jobOf(raw()).piece.metal);
});

test('a bath below zero keeps its sign', () => {
  const cold = jobOf(patched(pendant(), { 'bath.temperature': { value: -1.5, unit: 'degC' } }));
  expect(read(jobCode(cold)).bath.temperature).toBeCloseTo(271.65, 9);
});

describe('what comes from outside', () => {
  const text = jobCode(jobOf(pendant()));
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
    expect(readJobCode(typed)).toEqual({ fault });
  });

  test('one wrong letter anywhere is noticed', () => {
    for (let at = 1; at < text.length; at += 1) {
      const other = text.charAt(at) === 'Q' ? 'R' : 'Q';
      expect(readJobCode(text.slice(0, at) + other + text.slice(at + 1)), String(at)).toHaveProperty('fault');
    }
  });

  test('no text makes it throw, and what it takes it writes again', () => {
    const letters = fc.array(fc.constantFrom(...Array.from('ABCXYZabcxyz0189-_')), { maxLength: 80 });
    fc.assert(
      fc.property(letters, (made) => {
        const typed = `1${made.join('')}`;
        const found = readJobCode(typed);
        if ('job' in found) expect(jobCode(found.job)).toBe(typed);
        else expect(['foreign', 'newer', 'damaged', 'no-job']).toContain(found.fault);
      }),
      { numRuns: 3000 },
    );
    fc.assert(
      fc.property(fc.string(), (typed) => {
        expect(readJobCode(typed)).toHaveProperty('fault');
      }),
    );
  });
});

describe('the numbers of the words', () => {
  /** As they stand on sheets already printed; only ever added to. */
  const given: Readonly<Partial<Record<JobPath, string>>> = {
    'piece.metal': `fine-silver-999 sterling-925 C11000 C26000 stainless 304 316 chrome-plated nichrome Al-6061 gold
      gold-filled silver-plated plated galvanised unknown unknown-yellow cadmium-solder titanium silver-935-lowtarnish
      coin-900 C22000 C23000 C27000 C27200 C28000 C36000 C51000 C75200 mild-steel Al-1100 niobium pewter`,
    'piece.shape': 'rectangle disc band',
    'piece.faces': 'front back both',
    'piece.area': 'area share later',
    'piece.attached': 'seams stones glue hinges',
    'cathode.metal': `fine-silver-999 sterling-925 C11000 C26000 stainless 304 316 chrome-plated nichrome Al-6061 gold
      gold-filled silver-plated plated galvanised unknown unknown-yellow cadmium-solder titanium silver-935-lowtarnish
      coin-900 C22000 C23000 C27000 C27200 C28000 C36000 C51000 C75200 mild-steel Al-1100 niobium pewter`,
    'cathode.faces': 'front back both',
    'tub.kind': 'box round jug',
    'bath.salt': `NaNO3 KNO3 NaCl CuSO4 CuSO4.5H2O Na2SO4 Na2SO4.10H2O KCl K2SO4 (NH4)2SO4 NH4Cl NH4NO3 Cu(NO3)2 ZnSO4
      AgNO3 NaHCO3 Na2CO3 citric Na3cit NaOAc Na2S2O3 MgSO4 FeCl3`,
    'bath.water': 'deionised distilled rain tap',
    'bath.dissolved': 'Ag Cu Zn Sn Ni Fe Cr Al Au Pb Mn Mo Ge Si Mg P',
    hanger: 'wire hole tab rack',
    'resist.kind': 'nail-varnish paint-pen permanent-marker vinyl toner dry-film asphaltum',
    'supply.kind': 'bench adapter battery alternating dimmer unknown mains home-made car-battery',
    'supply.control': 'volts amps',
  };
  const coded = fieldRows.filter(([, { code, of }]) => code !== undefined && of !== undefined);

  test.each(coded)(
    'of %s are each given once, stay where they were, and fit',
    (path, { of = [], bits = 5 }) => {
      const words = given[path]?.split(/\s+/) ?? [];
      expect(words.length).toBeGreaterThan(0);
      expect(of.slice(0, words.length)).toEqual(words);
      expect(new Set(of).size).toBe(of.length);
      expect(of.length).toBeLessThanOrEqual(2 ** bits);
    },
  );

  test('cover every salt and element that a job can hold', () => {
    expect(saltIds).toEqual(expect.arrayContaining([...boughtSaltIds, ...Object.keys(refusedSalts)]));
    expect(elementIds).toEqual(expect.arrayContaining(Object.keys(atomicWeights)));
  });
});

test('every place of the code is taken, and no field is without one unless it says why', () => {
  const places = new Set(fieldRows.flatMap(([, { code }]) => (code === undefined ? [] : [code])));
  expect([...places].sort((a, b) => a - b)).toEqual(Array.from({ length: 34 }, (_, i) => i));
  for (const [path, { code, stays }] of fieldRows)
    expect((code === undefined) !== (stays === undefined), path).toBe(true);
});
