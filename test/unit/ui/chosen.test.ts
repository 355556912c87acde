import { expect, test } from 'vitest';
import { isChosen, withChoice } from '../../../src/lib/ui/kit/chosen.ts';

test('one of several names is chosen by the whole of it, spaces and all', () => {
  expect(isChosen('SILVER 1', 'SILVER 1', false)).toBe(true);
  expect(isChosen('SILVER 1', 'SILVER', false)).toBe(false);
  expect(isChosen('', '', false)).toBe(true);
});

test('of many, each that is ticked is chosen', () => {
  const two = withChoice(withChoice('', 'sheet', true), 'card', true);
  expect(['sheet', 'card', 'label'].map((one) => isChosen(two, one, true))).toEqual([true, true, false]);
});
