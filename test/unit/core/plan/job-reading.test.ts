import { describe, expect, test } from 'vitest';
import { jobJsonSchema, parseJob } from '../../../../src/lib/core/plan/job-input.ts';
import { checkBasisOf } from '../../../../src/lib/procedure/check-basis.ts';
import { amount, cuff, jobOf, patched, pendant, planOf, tokens } from '../../../fixtures/jobs.ts';

describe('names', () => {
  test.each([
    ['CuSO4.5H2O', 'CuSO4.5H2O'],
    ['CuSO4·5H2O', 'CuSO4.5H2O'],
    ['CuSO4 • 5H2O', 'CuSO4.5H2O'],
    ['CuSO₄·5H₂O', 'CuSO4.5H2O'],
    ['CuSO4*5H2O', 'CuSO4.5H2O'],
    ['copper-sulfate', 'CuSO4.5H2O'],
    ['table-salt', 'NaCl'],
    ['Na2SO4·10H2O', 'Na2SO4.10H2O'],
    ['FeCl3·6H2O', 'FeCl3'],
    ['NH4NO3', 'NH4NO3'],
  ])('%s is the salt %s', (typed, id) => {
    expect(jobOf(patched(cuff(), { 'bath.salt': typed })).bath.salt).toBe(id);
  });
  test.each([
    ['copper', 'C11000'],
    [' sterling ', 'sterling-925'],
    ['brass', 'C26000'],
    ['stainless-steel', 'stainless'],
    ['galvanized', 'galvanised'],
    ['304', '304'],
  ])('%s is the metal %s', (typed, id) => {
    expect(jobOf(patched(cuff(), { 'piece.metal': typed })).piece.metal).toBe(id);
  });
  test('304 opposite is stainless, whatever its number', () => {
    expect(jobOf(patched(pendant(), { 'cathode.metal': '304' })).cathode.metal).toBe('stainless');
  });
});

describe('units', () => {
  test('inches and millimetres read the same', () => {
    const metric = jobOf(patched(pendant(), { 'piece.width': amount(25.4, 'mm') }));
    const inches = jobOf(patched(pendant(), { 'piece.width': amount(1, 'in') }));
    expect(inches.piece.width).toBeCloseTo(metric.piece.width, 15);
  });
  test('a bound typed in another unit does not fail by rounding', () => {
    expect(parseJob(patched(pendant(), { 'tub.length': amount(1000 / 25.4, 'in') }))).toHaveProperty('job');
  });
  test('spellings are read', () => {
    const job = jobOf(
      patched(pendant(), { 'bath.temperature': amount(68, '°F'), 'piece.openArea': amount(4, 'cm²') }),
    );
    expect(job.bath.temperature).toBeCloseTo(293.15, 9);
    expect(job.piece.openArea).toBeCloseTo(4e-4, 12);
  });
});

describe('reading units', () => {
  const units = { length: 'in', temperature: 'degF' };
  test('stand at millimetres and degrees Celsius, and move no figure', () => {
    expect(jobOf(pendant()).units).toEqual({ length: 'mm', temperature: 'degC' });
    expect(jobOf(patched(pendant(), { units: { length: 'cm' } })).units).toEqual({
      length: 'cm',
      temperature: 'degC',
    });
    const { units: read, ...rest } = jobOf(patched(pendant(), { units }));
    const { units: usual, leftAtDefault, ...same } = jobOf(pendant());
    expect([read, usual]).toEqual([units, { length: 'mm', temperature: 'degC' }]);
    expect(rest).toEqual({
      ...same,
      leftAtDefault: leftAtDefault?.filter((path) => !path.startsWith('units.')),
    });
  });
  test('no answer goes stale over them', () => {
    expect(checkBasisOf(planOf(pendant(), { units }))).toEqual(checkBasisOf(planOf(pendant())));
  });
  test('another unit is named', () => {
    expect(parseJob(patched(pendant(), { 'units.length': 'ell' }))).toEqual({
      faults: [{ path: 'units.length', found: '"ell"', expected: 'mm, cm, in' }],
    });
  });
});

describe('shapes and defaults', () => {
  test('a disc stands as the square of its area', () => {
    const { piece } = jobOf(tokens());
    expect(piece.width).toBe(piece.height);
    expect(piece.faceArea * 1e6).toBeCloseTo((Math.PI / 4) * 25 ** 2, 6);
  });
  test('a band lies with its length across the tub', () => {
    const { piece } = jobOf(cuff());
    expect([piece.width, piece.height].map((side) => side * 1e3)).toEqual([150, 30]);
  });
  test('a share counts over the bitten faces', () => {
    const one = jobOf(cuff()).piece;
    const both = jobOf(patched(cuff(), { 'piece.faces': 'both' })).piece;
    expect(one.openArea).toBeCloseTo(0.4 * 0.15 * 0.03, 12);
    expect(both.openArea).toBeCloseTo(2 * 0.4 * 0.15 * 0.03, 12);
  });
  test('what may be left out has its default', () => {
    const job = jobOf(
      patched(pendant(), {
        'piece.count': undefined,
        'cathode.sideways': undefined,
        'cathode.faces': undefined,
        'bath.water': undefined,
        place: undefined,
        paper: undefined,
      }),
    );
    expect(job.piece).toMatchObject({ count: 1, through: false, at: null });
    expect(job.cathode).toMatchObject({ sideways: 0, faces: 'both' });
    expect(job.bath).toMatchObject({ water: 'deionised', record: null, dissolved: {}, chargePassed: 0 });
    expect(job.supply).toMatchObject({ kind: 'bench', showsAmps: true, leads: null });
    expect(job.place).toEqual({ use: 'home', room: null, country: null, mayTreat: false });
    expect(job.paper).toBe('A4');
  });
  test('an adapter by volts shows no amps unless it says so', () => {
    expect(jobOf(cuff()).supply.showsAmps).toBe(false);
    expect(jobOf(patched(cuff(), { 'supply.showsAmps': true })).supply.showsAmps).toBe(true);
  });
  test('the bare area may come later, on screen only', () => {
    const raw = patched(pendant(), { 'piece.openArea': undefined });
    expect(parseJob(raw)).toHaveProperty('faults');
    const later = parseJob(raw, { areaLater: true });
    expect('job' in later && later.job.piece).toMatchObject({ openArea: null, openAreaFrom: 'later' });
  });
});

test('the JSON Schema knows every field of the examples', () => {
  const text = JSON.stringify(jobJsonSchema());
  const keysOf = (value: unknown): string[] =>
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, inner]) => [key, ...keysOf(inner)])
      : [];
  for (const key of [pendant(), cuff(), tokens()].flatMap(keysOf)) expect(text).toContain(`"${key}"`);
});
