import { describe, expect, test } from 'vitest';
import { faultLine } from '../../../../src/lib/core/plan/fault.ts';
import type { Fault } from '../../../../src/lib/core/plan/fault.ts';
import { parseJob } from '../../../../src/lib/core/plan/job-input.ts';
import { amount, patched, pendant } from '../../../fixtures/jobs.ts';

function faultsOf(raw: unknown): readonly Fault[] {
  const parsed = parseJob(raw);
  if (!('faults' in parsed)) throw new Error('a job was read where faults were expected');
  return parsed.faults;
}

type Row = readonly [
  what: string,
  patch: Readonly<Record<string, unknown>>,
  path: string,
  found: string,
  expected: RegExp,
];

const rows: readonly Row[] = [
  ['an unknown field', { colour: 'red' }, 'colour', 'colour', /no such field/],
  ['an unknown field further in', { 'piece.weight': 3 }, 'piece.weight', 'weight', /no such field/],
  ['another version', { etchwright: 2 }, 'etchwright', '2', /^1$/],
  ['a shape nobody knows', { 'piece.shape': 'star' }, 'piece.shape', 'star', /rectangle, disc, band/],
  [
    'a number as text',
    { 'piece.depth': { value: '0.1', unit: 'mm' } },
    'piece.depth.value',
    '"0.1"',
    /number/,
  ],
  ['a volt for a length', { 'piece.depth': amount(1, 'V') }, 'piece.depth.unit', '"V"', /\bmm\b.*\bin\b/],
  ['an unknown unit', { 'tub.fill': amount(1, 'cubit') }, 'tub.fill.unit', '"cubit"', /\bmm\b/],
  [
    'a gauge without its system',
    { 'piece.thickness': amount(20, 'gauge') },
    'piece.thickness.unit',
    'gauge',
    /gauge-BS, gauge-SWG/,
  ],
  [
    'a gauge that does not exist',
    { 'piece.thickness': amount(99, 'gauge-BS') },
    'piece.thickness',
    '99 gauge-BS',
    /gauge/,
  ],
  ['a width over 1 m', { 'piece.width': amount(1001, 'mm') }, 'piece.width', '1001 mm', /1 to 1000 mm/],
  [
    'a gap over 1 m, in inches',
    { 'cathode.gap': amount(39.4, 'in') },
    'cathode.gap',
    '39.4 in',
    /1 to 1000 mm/,
  ],
  ['a tub over 1 m', { 'tub.length': amount(1.1, 'm') }, 'tub.length', '1.1 m', /to 1000 mm/],
  ['a negative length', { 'piece.height': amount(-40, 'mm') }, 'piece.height', '-40 mm', /1 to 1000 mm/],
  ['no depth at all', { 'piece.depth': amount(0, 'mm') }, 'piece.depth', '0 mm', /0\.001 to 50 mm/],
  [
    'a depth over the thickness',
    { 'piece.depth': amount(1.1, 'mm') },
    'piece.depth',
    '1.100 mm',
    /at most the thickness, 1\.000 mm/,
  ],
  ['no piece', { 'piece.count': 0 }, 'piece.count', '0', /1/],
  ['one piece and a half', { 'piece.count': 1.5 }, 'piece.count', '1.5', /integer|whole/],
  ['a hundred and one pieces', { 'piece.count': 101 }, 'piece.count', '101', /100/],
  ['area and share together', { 'piece.openShare': 0.3 }, 'piece.openShare', '0.3', /not both/],
  [
    'neither area nor share',
    { 'piece.openArea': undefined },
    'piece.openArea',
    'nothing',
    /bare area.*openShare/,
  ],
  [
    'a share over one',
    { 'piece.openArea': undefined, 'piece.openShare': 1.2 },
    'piece.openShare',
    '1.2',
    /1/,
  ],
  ['a share of nothing', { 'piece.openArea': undefined, 'piece.openShare': 0 }, 'piece.openShare', '0', /0/],
  [
    'more bare metal than there is',
    { 'piece.openArea': amount(13, 'cm2') },
    'piece.openArea',
    '13.00 cm2',
    /at most 12\.00 cm2/,
  ],
  [
    'a metal nobody knows',
    { 'piece.metal': 'unobtainium' },
    'piece.metal',
    'unobtainium',
    /sterling-925.*copper/,
  ],
  ['a metal named like a method', { 'piece.metal': 'toString' }, 'piece.metal', 'toString', /sterling-925/],
  ['a plate nobody knows', { 'cathode.metal': 'wood' }, 'cathode.metal', 'wood', /stainless/],
  ['a salt nobody knows', { 'bath.salt': 'sugar' }, 'bath.salt', 'sugar', /NaNO3.*CuSO4\.5H2O/],
  ['a salt named like a method', { 'bath.salt': 'constructor' }, 'bath.salt', 'constructor', /NaNO3/],
  ['no strength', { 'bath.strength': amount(0, 'g/L') }, 'bath.strength', '0 g/L', /more than 0/],
  [
    'a boiling bath',
    { 'bath.temperature': amount(120, 'degC') },
    'bath.temperature',
    '120 degC',
    /-20 to 100 degC/,
  ],
  [
    'an element nobody counts',
    { 'bath.dissolved': { Hg: amount(1, 'mg/L') } },
    'bath.dissolved.Hg',
    'Hg',
    /no such field/,
  ],
  ['a resist nobody knows', { 'resist.kind': 'wax' }, 'resist.kind', 'wax', /nail-varnish.*vinyl/],
  ['a supply nobody knows', { 'supply.kind': 'solar' }, 'supply.kind', 'solar', /bench, adapter/],
  ['a control nobody knows', { 'supply.control': 'watts' }, 'supply.control', 'watts', /volts, amps/],
  ['negative volts', { 'supply.volts': amount(-7, 'V') }, 'supply.volts', '-7 V', /more than 0/],
  [
    'half a tub',
    { 'tub.width': undefined },
    'tub',
    'length, fill',
    /length, width and fill; or diameter and fill; or waterByJug/,
  ],
  ['two tubs in one', { 'tub.diameter': amount(90, 'mm') }, 'tub', 'diameter', /diameter and fill/],
  ['no tub', { tub: {} }, 'tub', 'nothing', /waterByJug/],
  ['a country in small letters', { 'place.country': 'nz' }, 'place.country', 'nz', /two capital letters/],
  ['another paper', { paper: 'A3' }, 'paper', 'A3', /A4, Letter/],
  ['a through that is no yes or no', { 'piece.through': 'yes' }, 'piece.through', 'yes', /boolean|true/],
  ['an endless number', { 'piece.depth': amount(Infinity, 'mm') }, 'piece.depth.value', 'Infinity', /finite/],
];

describe('one fault names path, found and expected:', () => {
  test.each(rows)('%s', (_what, patch, path, found, expected) => {
    const fault = faultsOf(patched(pendant(), patch)).find((one) => one.path === path);
    expect(fault?.found).toContain(found);
    expect(fault?.expected).toMatch(expected);
  });
  test.each(rows)('%s: and no other field is blamed', (_what, patch, path) => {
    expect(faultsOf(patched(pendant(), patch)).map((one) => one.path)).toEqual([path]);
  });
});

describe('faults speak to a reader:', () => {
  const missing = ['title', 'piece', 'cathode', 'tub', 'bath', 'resist', 'supply', 'etchwright'];
  test.each(missing)('a missing %s says what it must be, not its own name again', (field) => {
    const [fault] = faultsOf(patched(pendant(), { [field]: undefined }));
    expect(fault).toMatchObject({ path: field, found: 'nothing' });
    expect(fault?.expected).not.toBe(field);
  });
  test('a bare number for an amount says how an amount is written', () => {
    const [fault] = faultsOf(patched(pendant(), { 'piece.depth': 0.1 }));
    expect(fault).toMatchObject({ path: 'piece.depth', found: '0.1' });
    expect(fault?.expected).toMatch(/value.*unit/);
  });
  test.each([
    ['an empty title', { title: '' }],
    ['half a piece', { 'piece.count': 1.5 }],
    ['no piece', { 'piece.count': 0 }],
    ['a share over one', { 'piece.openArea': undefined, 'piece.openShare': 1.2 }],
  ])('%s is told without the schema’s shorthand', (_what, patch) => {
    for (const { expected } of faultsOf(patched(pendant(), patch))) {
      expect(expected).not.toMatch(/^[!<>=]|Invalid|Received|Object/);
    }
  });
  test('a title of blanks is no title', () => {
    expect(faultsOf(patched(pendant(), { title: '   ' })).map(({ path }) => path)).toEqual(['title']);
  });
});

describe('the whole file', () => {
  test.each([[null], [[]], ['job'], [3], [true], [{}]])('%j is no job, and says so', (raw) => {
    for (const { found, expected } of faultsOf(raw)) {
      expect(found).not.toBe('');
      expect(expected).not.toBe('');
    }
  });
  test('shows all faults at once', () => {
    const faults = faultsOf(
      patched(pendant(), { 'piece.width': amount(2, 'm'), 'bath.temperature': amount(1, 'V'), paper: 'A0' }),
    );
    expect(faults.map(({ path }) => path)).toEqual(['piece.width', 'bath.temperature.unit', 'paper']);
  });
  test('a fault is one line with path, found and expected', () => {
    expect(faultLine({ path: 'piece.depth', found: '2 m', expected: 'less' })).toBe(
      'piece.depth: found 2 m, expected less',
    );
    expect(faultLine({ path: '', found: '3', expected: 'a job' })).toBe('job: found 3, expected a job');
  });
});
