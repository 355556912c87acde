import { expect, test } from 'vitest';
import { seeds } from '../property/runs.ts';
import { walkMany } from './walks.ts';

const WALKS = 2500;

test.each(seeds(4, WALKS))(
  '2500 random walks from seed %d never power on without every required check fresh',
  (seed) => {
    const tally = walkMany(WALKS, seed);
    // the walks must get there, or they prove nothing
    expect(tally.runs).toBeGreaterThan(0.05 * WALKS);
    expect(tally.edits).toBeGreaterThan(0.002 * WALKS);
    expect(tally.reloads).toBeGreaterThan(0.02 * WALKS);
    expect(tally.clockBack).toBeGreaterThan(0.02 * WALKS);
    for (const state of [
      'etch.running',
      'etch.stopping',
      'etch.looking',
      'neutralise.rinsing',
      'bath.stored',
      'sheet',
    ]) {
      expect(tally.reached[state] ?? 0, state).toBeGreaterThan(0.0004 * WALKS);
    }
  },
);
