import { describe, expect, test } from 'vitest';
import { monotoneCubic, OutsideTable, readTable } from '../../../../src/lib/core/chemistry/curve.ts';
import type { Table } from '../../../../src/lib/core/facts/datum.ts';
import { bathSalts } from '../../../../src/lib/core/facts/salts.ts';

const between = (low: number, high: number, count = 200) =>
  Array.from({ length: count + 1 }, (_, i) => low + ((high - low) * i) / count);
const rises = (values: readonly number[]) =>
  values.every((value, i) => i === 0 || value >= (values[i - 1] ?? value) - 1e-12);

const tables: [string, Table, 'linear' | 'log'][] = Object.entries(bathSalts).flatMap(
  ([id, salt]): [string, Table, 'linear' | 'log'][] => [
    [`${id} solubility`, salt.solubility, 'linear'],
    [`${id} conductivity`, salt.conductivity, 'log'],
    [`${id} density`, salt.density, 'linear'],
  ],
);

describe.each(tables)('%s', (_name, table, scale) => {
  const [low, high] = [table.x[0] ?? Number.NaN, table.x.at(-1) ?? Number.NaN];
  test('is exact at its points', () => {
    expect(table.x.map((x) => readTable(table, x, scale))).toEqual(table.y);
  });
  test('joins its points without a jump', () => {
    for (const [i, x] of table.x.entries()) {
      for (const beside of [x * (1 - 1e-9), x * (1 + 1e-9)]) {
        if (beside < low || beside > high) continue;
        expect(readTable(table, beside, scale)).toBeCloseTo(table.y[i] ?? Number.NaN, 5);
      }
    }
  });
  test('rises between them as they rise', () => {
    expect(rises(between(low, high).map((x) => readTable(table, Math.min(x, high), scale)))).toBe(true);
  });
  test('refuses outside', () => {
    for (const outside of [low - 1e-6, high + 1e-6, Number.NaN, Infinity, -Infinity]) {
      expect(() => readTable(table, outside, scale)).toThrow(OutsideTable);
    }
  });
});

test('a refusal names what was found and what the table covers', () => {
  expect(() => readTable(bathSalts.NaNO3.solubility, 41)).toThrow(/41 degC found, 0 to 40 degC expected/);
});

test('a straight line stays straight, also on uneven points', () => {
  const x = [0, 1, 5, 6, 20];
  const y = x.map((q) => 3 - 2 * q);
  for (const q of between(0, 20)) expect(monotoneCubic(x, y, q)).toBeCloseTo(3 - 2 * q, 9);
});

test('a step makes no bump', () => {
  const values = between(0, 5).map((q) => monotoneCubic([0, 1, 2, 3, 4, 5], [0, 0, 0, 1, 1, 1], q));
  expect(Math.min(...values)).toBe(0);
  expect(Math.max(...values)).toBe(1);
  expect(rises(values)).toBe(true);
});

test('a turn is passed without overshoot', () => {
  const values = between(0, 4).map((q) => monotoneCubic([0, 1, 2, 3, 4], [0, 2, 3, 1, 0.5], q));
  expect(Math.max(...values)).toBe(3);
  expect(Math.min(...values)).toBe(0);
});
