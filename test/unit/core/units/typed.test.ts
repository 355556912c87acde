import { expect, test } from 'vitest';
import { inward, secondDigit, stepped } from '../../../../src/lib/core/units/typed.ts';

test('a field steps from what is typed, and never below nothing', () => {
  expect(stepped(0.3, 0.05)).toBe(0.35);
  expect(stepped(0.1, 0.2)).toBe(0.3);
  expect(stepped(NaN, 5)).toBe(5);
  expect(stepped(2, -5)).toBe(0);
});

test.each([
  [23, 1],
  [0.35, 0.01],
  [7, 0.1],
  [120, 10],
])('%d is stepped by %d', (value, step) => {
  expect(secondDigit(value)).toBeCloseTo(step, 12);
});

test('a limit is rounded inward', () => {
  expect(inward(359.96, false)).toBe('359.9');
  expect(inward(0.99821, true)).toBe('0.9983');
  expect(inward(26, false)).toBe('26');
});
