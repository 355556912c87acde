import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plain, significant } from '../../../src/lib/core/units/format.ts';
import * as english from '../../../src/lib/words/en/locale.ts';
import { spanText } from '../../../src/lib/words/en/times.ts';
import { numbersIn, timesIn } from '../../../src/lib/words/format.ts';

describe('numbers in English', () => {
  test('are written as faults and fields write them', () => {
    const value = fc
      .tuple(fc.double({ min: -10, max: 10, noNaN: true }), fc.integer({ min: -8, max: 8 }))
      .map(([mantissa, exponent]) => (Math.abs(mantissa) < 1e-6 ? 0 : mantissa * 10 ** exponent));
    fc.assert(
      fc.property(value, fc.integer({ min: 1, max: 6 }), (number, digits) => {
        expect(english.significant(number, digits)).toBe(significant(number, digits));
        expect(english.plain(number, digits)).toBe(plain(number, digits));
      }),
    );
  });
  test.each([
    [1.234, 5.678, '1.2 to 5.7'],
    [9.87, 10.12, '9.87 to 10.1'],
    [3, 3, '3.00'],
    [0, 0.5, '0 to 0.50'],
    [0.36, 0.48, '0.36 to 0.48'],
  ])('%d and %d make the range %s', (low, high, text) => {
    expect(english.range(low, high)).toBe(text);
  });
  test.each([
    [0.00394, 3, 1e-4, '0.0039'],
    [0.0181, 3, 1e-4, '0.0181'],
    [0.00004, 3, 1e-4, '0.00004'],
    [1.18111, 4, 1e-4, '1.181'],
  ])('%d to %d digits and no finer than %d is %s', (value, digits, finest, text) => {
    expect(english.significant(value, digits, finest)).toBe(text);
  });
  test('count one and many', () => {
    expect([0, 1, 2].map((n) => english.count(n, 'job'))).toEqual(['0 jobs', '1 job', '2 jobs']);
    expect(english.count(2, 'supply', 'supplies')).toBe('2 supplies');
  });
});

describe('another locale', () => {
  test('has its own decimal mark, and still no separators', () => {
    const { significant: written, plain: exact } = numbersIn('de');
    expect(written(12345.6, 6)).toBe('12345,6');
    expect(exact(0.5)).toBe('0,5');
    expect(written(-7.256)).toBe('−7,26');
  });
  test('has its own clock and calendar', () => {
    const at = new Date(2026, 10, 3, 14, 5).getTime();
    expect(timesIn('en-GB').clock(at)).toBe('14:05');
    expect(timesIn('en-GB').day(at)).toBe('3 Nov 2026');
    expect(timesIn('en-GB').fullDay(at)).toBe('3 November 2026');
    expect(timesIn('en-GB').clockParts(at)).toEqual({ digits: '14:05', half: '' });
    expect(timesIn('en-US').clockParts(at)).toEqual({ digits: '02:05', half: 'PM' });
    expect(timesIn('de').day(at)).toBe('03.11.2026');
  });
});

test.each([
  [42_000, '42 s'],
  [192_000, '3 min 12 s'],
  [7_500_000, '2 h 5 min'],
])('%d ms is %s', (ms, text) => {
  expect(spanText(ms)).toBe(text);
});
