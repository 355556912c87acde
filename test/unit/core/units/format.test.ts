import { expect, test } from 'vitest';
import { plain, significant } from '../../../../src/lib/core/units/format.ts';

test.each([
  [0, 3, '0'],
  [1234, 3, '1230'],
  [1235, 3, '1240'],
  [12.345, 3, '12.3'],
  [0.0012345, 3, '0.00123'],
  [5, 3, '5.00'],
  [999.9, 3, '1000'],
  [-7.256, 3, '−7.26'],
  [123456, 2, '120000'],
  [0.1 + 0.2, 4, '0.3000'],
])('%d to %d digits is %s', (value, digits, text) => {
  expect(significant(value, digits)).toBe(text);
});

test.each([
  [9.996, 3, '10.0'],
  [99.96, 3, '100'],
  [0.09996, 3, '0.100'],
])('%d, rounded up to another power of ten, keeps %d digits: %s', (value, digits, text) => {
  expect(significant(value, digits)).toBe(text);
});

test.each([1e-11, 1e-7, 3e5, 1e12])('%d is written without an exponent', (value) => {
  expect(significant(value)).toMatch(/^[\d.]+$/);
});

test.each([
  [20, '20'],
  [20.5, '20.5'],
  [0.1, '0.1'],
  [100, '100'],
  [1000, '1000'],
  [-3.5, '−3.5'],
  [0, '0'],
])('%d is typed as %s', (value, text) => {
  expect(plain(value)).toBe(text);
});
