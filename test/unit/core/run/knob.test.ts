import { expect, test } from 'vitest';
import { knobPoints } from '../../../../src/lib/core/run/knob.ts';
import { reads } from '../../../fixtures/bench-run.ts';

/** 10 Ω of bath and 0.5 Ω of leads; warm, the bath conducts twice as well */
const cell = {
  offset: 2,
  bath: 10,
  leads: 0.5,
  gainAt: (celsius: number | null) => (celsius === null ? 1 : 2),
};
const at = (amps: number | null, volts: number | null, celsius: number | null = null) => ({
  ...reads(1, amps, celsius),
  volts,
});

test('one setting of the knob tells one point, the mean of its readings', () => {
  const [point, ...others] = knobPoints([at(0.4, 6.1), at(0.6, 5.9)], cell);
  expect(others).toEqual([]);
  expect(point?.modelled).toBeCloseTo(0.5 * 10.5, 9);
  expect(point?.over).toBeCloseTo(4, 9);
  expect(knobPoints([at(0.4, 6), at(0.2, 4)], cell)).toHaveLength(2);
});

test('a warm bath is modelled warm', () => {
  expect(knobPoints([at(0.4, 6, 30)], cell)[0]?.modelled).toBeCloseTo(0.4 * 5.5, 9);
});

test('a reading without volts or amps tells nothing', () => {
  expect(knobPoints([at(null, 6), at(0.4, null), at(0, 6), at(0.4, 0)], cell)).toEqual([]);
});
