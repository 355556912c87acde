import { describe, expect, test } from 'vitest';
import { boxOf, displaced, immersedHeight, misfit } from '../../../../src/lib/core/cell/tub.ts';
import type { Tub } from '../../../../src/lib/core/cell/setup.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';
import { amount, jobOf, patched, pendant, tokens } from '../../../fixtures/jobs.ts';

const mm = (value: number) => si<'length'>(value / 1e3);
const round = (diameter: number, fill: number): Tub => ({
  kind: 'round',
  diameter: mm(diameter),
  fill: mm(fill),
});

describe('the tub as a box', () => {
  test('a round one keeps its floor and its own wall', () => {
    const box = boxOf(round(100, 60));
    expect(box.floor * 1e6).toBeCloseTo(7853.98, 2);
    expect(box.width * box.length).toBeCloseTo(box.floor, 12);
    expect(box.perimeter * 1e3).toBeCloseTo(314.159, 3);
  });
  test('a jug is a cube of its water', () => {
    const box = boxOf({ kind: 'jug', water: si<'volume'>(1e-3) });
    expect([box.width, box.length, box.fill].map((side) => side * 1e3)).toEqual([100, 100, 100]);
  });
});

describe('what the parts push aside', () => {
  test('is piece and plate, each with its thickness', () => {
    const { piece, cathode, tub } = jobOf(pendant());
    expect(displaced(piece, cathode, tub) * 1e6).toBeCloseTo(30 * 40 * 1e-3 + 30 * 40 * 1e-3, 9);
  });
  test('counts a piece bitten on both faces once', () => {
    const both = jobOf(patched(pendant(), { 'piece.faces': 'both' }));
    expect(displaced(both.piece, both.cathode, both.tub) * 1e6).toBeCloseTo(2.4, 9);
  });
  test('counts every piece, and of the plate only what is under the liquid', () => {
    const job = jobOf(patched(pendant(), { 'piece.count': 2, 'cathode.height': amount(90, 'mm') }));
    expect(immersedHeight(job.cathode, job.tub) * 1e3).toBe(60);
    expect(displaced(job.piece, job.cathode, job.tub) * 1e6).toBeCloseTo(2 * 1.2 + 1.8, 9);
  });
});

describe('the fit', () => {
  const fits = (patch: Record<string, unknown>) => {
    const { piece, cathode, tub } = jobOf(patched(pendant(), patch));
    return misfit(piece, cathode, tub);
  };
  test.each([
    ['tooTall', { 'piece.height': amount(60.1, 'mm') }, { 'piece.height': amount(60, 'mm') }],
    ['tooWide', { 'piece.width': amount(80.1, 'mm') }, { 'piece.width': amount(80, 'mm') }],
    ['tooWide', { 'cathode.width': amount(80.1, 'mm') }, { 'cathode.width': amount(80, 'mm') }],
    ['tooLong', { 'cathode.gap': amount(119, 'mm') }, { 'cathode.gap': amount(117, 'mm') }],
    ['tooMany', { 'piece.count': 5 }, { 'piece.count': 4 }],
    [
      'crowded',
      {
        'piece.count': 4,
        'piece.thickness': amount(50, 'mm'),
        'piece.height': amount(40, 'mm'),
        'piece.width': amount(30, 'mm'),
        'tub.length': amount(82, 'mm'),
      },
      { 'piece.count': 4, 'piece.thickness': amount(30, 'mm'), 'tub.length': amount(82, 'mm') },
    ],
  ] as const)('%s, and just not', (reason, over, under) => {
    expect(fits(over)).toBe(reason);
    expect(fits(under)).toBeNull();
  });
  test('measures a disc by its diameter', () => {
    const { piece, cathode, tub } = jobOf(tokens());
    const filled = (mm: number) => ({ ...tub, fill: mm / 1e3 }) as typeof tub;
    expect(misfit(piece, cathode, filled(25.01))).not.toBe('tooTall');
    expect(misfit(piece, cathode, filled(24.9))).toBe('tooTall');
  });
  test('in a round tub counts across and along together', () => {
    const tub = { diameter: amount(40, 'mm'), fill: amount(60, 'mm') };
    expect(fits({ tub, 'cathode.gap': amount(20, 'mm') })).toBeNull();
    expect(fits({ tub, 'cathode.gap': amount(30, 'mm') })).toBe('tooLong');
    expect(fits({ tub: { ...tub, diameter: amount(29, 'mm') }, 'cathode.gap': amount(5, 'mm') })).toBe(
      'tooWide',
    );
  });
  test('is not asked of a jug, which has no walls', () => {
    expect(fits({ tub: { waterByJug: amount(50, 'mL') } })).toBeNull();
  });
});
