import { expect, test } from 'vitest';
import { walkMany } from './walks.ts';

const COUNT = 50_000;

test('50 000 random walks never power on without every required check fresh', { timeout: 900_000 }, () => {
  const tally = walkMany(COUNT, 1_000_000);
  // the walks must get there, or they prove nothing
  expect(tally.runs).toBeGreaterThan(0.05 * COUNT);
  expect(tally.edits).toBeGreaterThan(100);
  expect(tally.reloads).toBeGreaterThan(1_000);
  expect(tally.clockBack).toBeGreaterThan(1_000);
  for (const state of [
    'etch.running',
    'etch.stopping',
    'etch.looking',
    'neutralise.rinsing',
    'bath.stored',
    'sheet',
  ]) {
    expect(tally.reached[state] ?? 0, state).toBeGreaterThan(20);
  }
});
