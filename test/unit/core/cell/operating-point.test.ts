import { describe, expect, test } from 'vitest';
import { currentAt, operatingPoint } from '../../../../src/lib/core/cell/operating-point.ts';
import type { Supply } from '../../../../src/lib/core/cell/setup.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';

const base = { kind: 'bench', showsAmps: true, leads: null } as const;
const byVolts = (volts: number, maxAmps: number | null = null): Supply => ({
  ...base,
  control: 'volts',
  volts: si<'voltage'>(volts),
  maxAmps: maxAmps === null ? null : si<'current'>(maxAmps),
});
const byAmps = (amps: number, maxVolts: number): Supply => ({
  ...base,
  control: 'amps',
  amps: si<'current'>(amps),
  maxVolts: si<'voltage'>(maxVolts),
});
/** The bench with 2 V offset, 2 Ω and the plan's ceiling. */
const at = (supply: Supply, offset = 2, resistance = 2) =>
  operatingPoint(supply, si<'voltage'>(offset), si<'resistance'>(resistance), si<'voltage'>(9.5));

describe('volts held', () => {
  test('drive what is left over the offset', () => {
    expect(at(byVolts(6))).toEqual({ current: 2, volts: 6, heldBy: 'volts' });
  });
  test('give way to the amps limit', () => {
    expect(at(byVolts(6, 1.5))).toEqual({ current: 1.5, volts: 5, heldBy: 'amps' });
  });
  test('stop at the ceiling of every plan', () => {
    expect(at(byVolts(9.9))).toMatchObject({ volts: 9.5, current: 3.75 });
  });
});

describe('amps held', () => {
  test('take the volts they need', () => {
    expect(at(byAmps(1, 8))).toEqual({ current: 1, volts: 4, heldBy: 'amps' });
  });
  test('give way to the volts limit', () => {
    expect(at(byAmps(5, 6))).toEqual({ current: 2, volts: 6, heldBy: 'volts' });
  });
  test('never push the volts over the ceiling', () => {
    expect(at(byAmps(100, 9.99)).volts).toBe(9.5);
  });
});

describe('near the offset', () => {
  const current = (volts: number) => currentAt(si<'voltage'>(volts), si<'voltage'>(2), si<'resistance'>(2));
  test('current rises with volts everywhere and is never negative', () => {
    const sweep = Array.from({ length: 1000 }, (_, i) => current(i / 100));
    expect(sweep.every((amps, i) => amps > 0 && (i === 0 || amps > (sweep[i - 1] ?? amps)))).toBe(true);
  });
  test('it dies away smoothly: value and slope meet at the edge', () => {
    const step = 1e-6;
    expect(current(2.1 + step)).toBeCloseTo(current(2.1 - step), 5);
    const above = (current(2.1 + 2 * step) - current(2.1 + step)) / step;
    const below = (current(2.1 - step) - current(2.1 - 2 * step)) / step;
    expect(above).toBeCloseTo(below, 3);
  });
  test('a held current never asks for more than the knob gives', () => {
    for (const amps of [1e-6, 0.01, 0.04, 0.05, 0.1]) {
      for (const volts of [0.5, 1.9, 2.05, 2.1, 2.2, 3]) {
        const point = at(byVolts(volts, amps));
        expect(point.volts).toBeLessThanOrEqual(volts);
        expect(point.current).toBeLessThanOrEqual(Math.min(amps, current(volts)) + 1e-15);
      }
    }
  });
});
