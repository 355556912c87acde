import { expect, test } from 'vitest';
import { fromHours, fromMinutes, toMinutes } from '../../../../src/lib/core/units/time.ts';

test('the clock counts in milliseconds', () => {
  expect(fromMinutes(1.5)).toBe(90_000);
  expect(toMinutes(90_000)).toBe(1.5);
  expect(fromHours(2)).toBe(fromMinutes(120));
});
