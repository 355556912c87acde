import { describe, expect, test } from 'vitest';
import { converted, fromSi, spellingsOf, toSi, unitsOf } from '../../../../src/lib/core/units/convert.ts';
import { dimensions } from '../../../fixtures/dimensions.ts';

const everyUnit = dimensions.flatMap((dimension) =>
  unitsOf(dimension).map((symbol) => ({ dimension, symbol })),
);
const scaled = everyUnit.filter(({ symbol }) => !symbol.startsWith('gauge-'));

test('every dimension but none has no unit', () => {
  expect(dimensions.filter((dimension) => unitsOf(dimension).length === 0)).toEqual([]);
});

test.each(scaled)('$symbol goes to SI and back', ({ dimension, symbol }) => {
  for (const value of [-40, 0, 1e-9, 0.3, 1, 7.25, 1e6]) {
    const back = fromSi(toSi(value, symbol, dimension), symbol);
    expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1e3, Math.abs(value)));
  }
});

test.each([
  [25.4, 'mm', 1, 'in', 'length'],
  [1, 'mm', 1000, 'um', 'length'],
  [1, 'in', 1000, 'thou', 'length'],
  [1, 'm3', 1000, 'L', 'volume'],
  [1, 'A/dm2', 10, 'mA/cm2', 'currentDensity'],
  [1, 'g/L', 1000, 'mg/L', 'massConcentration'],
  [20, 'degC', 68, 'degF', 'temperature'],
  [-40, 'degC', -40, 'degF', 'temperature'],
  [0, 'degC', 273.15, 'K', 'temperature'],
  [1, 'A.h', 3600, 'C', 'charge'],
  [1, 'S/m', 10, 'mS/cm', 'conductivity'],
  [1, 'm2', 10_000, 'cm2', 'area'],
] as const)('%d %s is %d %s', (a, one, b, other, dimension) => {
  expect(toSi(a, one, dimension)).toBeCloseTo(toSi(b, other, dimension), 9);
});

describe('other spellings', () => {
  test.each([
    ['μm', 'um', 'length'],
    ['µm', 'um', 'length'],
    ['"', 'in', 'length'],
    ['cm²', 'cm2', 'area'],
    ['m³', 'm3', 'volume'],
    ['ml', 'mL', 'volume'],
    ['°C', 'degC', 'temperature'],
    ['Ω', 'ohm', 'resistance'],
    ['A·h', 'A.h', 'charge'],
    ['Ah', 'A.h', 'charge'],
    ['g/l', 'g/L', 'massConcentration'],
  ] as const)('%s is %s', (typed, symbol, dimension) => {
    expect(spellingsOf(dimension)).toContain(typed);
    expect(toSi(3, typed, dimension)).toBe(toSi(3, symbol, dimension));
  });
  test('are all understood in their own dimension', () => {
    for (const dimension of dimensions) {
      for (const typed of spellingsOf(dimension)) expect(toSi(1, typed, dimension)).toBeDefined();
    }
  });
});

describe('refuses', () => {
  test.each(['parsec', '', 'MM', 'toString', '__proto__'])('the unknown unit "%s", by name', (symbol) => {
    expect(() => toSi(1, symbol, 'length')).toThrow(
      new RangeError(`unit "${symbol}" found, one of ${unitsOf('length').join(', ')} expected`),
    );
  });
  test('a unit of another dimension', () => {
    expect(() => toSi(1, 'V', 'length')).toThrow(/"V" found, one of m, cm, mm/);
  });
  test('a gauge that does not exist', () => {
    expect(() => toSi(41, 'gauge-BS', 'length')).toThrow(/41 found, 0 to 40 expected/);
  });
  test('the way back to a gauge', () => {
    expect(() => fromSi(toSi(1, 'mm', 'length'), 'gauge-BS')).toThrow(/gauge-BS/);
  });
});

test.each([
  [100, 'um', 'mm', 0.1],
  [0.1, 'mm', 'um', 100],
  [2500, 'mg', 'g', 2.5],
  [0.07, '1', '%', 7],
  [68, 'degF', 'degC', 20],
  [7, 'um', 'um', 7],
] as const)('%d %s is exactly %s as %d', (value, from, to, expected) => {
  expect(converted(value, from, to)).toBe(expected);
});

test('units of two dimensions are not converted into each other', () => {
  expect(() => converted(1, 'mm', 'mL')).toThrow(RangeError);
  expect(() => converted(1, 'mm', 'gauge-BS')).toThrow(RangeError);
});
