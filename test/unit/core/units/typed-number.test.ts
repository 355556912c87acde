import { describe, expect, test } from 'vitest';
import { numberIn, numberWithin, wholeWithin } from '../../../../src/lib/core/units/typed-number.ts';

describe('a typed number', () => {
  test.each([
    ['1.2', 1.2],
    ['1,2', 1.2],
    [' 100 000 ', 100_000],
    ['−5', -5],
    ['', null],
    ['lots', null],
    ['1.2.3', null],
  ])('is read from "%s"', (typed, number) => {
    expect(numberIn(typed)).toBe(number);
  });
  test('counts within its bounds, both ends included', () => {
    expect(['0', '5', '5,1', '-1', 'many'].map((typed) => numberWithin(typed, 0, 5))).toEqual([
      0,
      5,
      null,
      null,
      null,
    ]);
    expect(numberWithin('1e9', 0, Infinity)).toBe(1e9);
  });
  test('is whole or none where things are counted', () => {
    expect(['1', '200', '1.5', '0', ''].map((typed) => wholeWithin(typed, 1, 200))).toEqual([
      1,
      200,
      null,
      null,
      null,
    ]);
  });
});
