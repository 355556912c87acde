import { describe, expect, test } from 'vitest';
import {
  boxOf,
  displaced,
  immersedHeight,
  misfit,
  mostHung,
  remedyFor,
} from '../../../../src/lib/core/cell/tub.ts';
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
  test.each([
    [
      { 'piece.height': amount(60.1, 'mm') },
      'fill-to',
      61,
      'mm',
      (n: number) => ({ 'tub.fill': amount(n, 'mm') }),
    ],
    [
      { 'piece.width': amount(80.1, 'mm') },
      'tub-across',
      81,
      'mm',
      (n: number) => ({ 'tub.width': amount(n, 'mm') }),
    ],
    [
      { 'cathode.width': amount(80.1, 'mm') },
      'plate-narrow',
      80,
      'mm',
      (n: number) => ({ 'cathode.width': amount(n, 'mm') }),
    ],
    [
      { 'cathode.gap': amount(119, 'mm') },
      'plate-near',
      118,
      'mm',
      (n: number) => ({ 'cathode.gap': amount(n, 'mm') }),
    ],
    [
      { 'tub.length': amount(10, 'mm'), 'cathode.gap': amount(5, 'mm'), 'piece.thickness': amount(5, 'mm') },
      'tub-long',
      11,
      'mm',
      (n: number) => ({ 'tub.length': amount(n, 'mm') }),
    ],
    [{ 'piece.count': 5 }, 'hang-most', 2, '1', (n: number) => ({ 'piece.count': n })],
  ] as const)(
    '%j: what is named takes the misfit away, one less does not',
    (patch, way, size, unit, mended) => {
      const job = jobOf(patched(pendant(), patch));
      const reason = misfit(job.piece, job.cathode, job.tub);
      if (reason === null || job.tub.kind === 'jug') throw new Error('fits already');
      expect(remedyFor(reason, job.piece, job.cathode, job.tub)).toEqual({
        way,
        amount: { value: size, unit },
      });
      expect(fits({ ...patch, ...mended(size) })).not.toBe(reason);
    },
  );
  test.each([
    [80, 60, 'hang-most', 2, '1'],
    [60, 60, 'hang-most', 1, '1'],
    [31, 41, 'tub-holds', 123, 'mL'],
  ])('crowded, a tub of %s × %s mm: %s %s %s', (width, fill, way, value, unit) => {
    const { piece, cathode, tub } = jobOf(
      patched(pendant(), {
        'piece.count': 4,
        'piece.thickness': amount(50, 'mm'),
        'cathode.gap': amount(10, 'mm'),
        tub: {
          length: amount(62, 'mm'),
          width: amount(width, 'mm'),
          fill: amount(fill, 'mm'),
        },
      }),
    );
    if (tub.kind === 'jug') throw new Error('no jug');
    expect(remedyFor('crowded', piece, cathode, tub)).toEqual({ way, amount: { value, unit } });
  });
  test('counts how many hang side by side, discs by their diameter', () => {
    const { piece, tub } = jobOf(pendant());
    expect(mostHung(piece, tub)).toBe(2);
    const disc = jobOf(tokens()).piece;
    expect(mostHung(disc, { ...tub, width: mm(75), fill: mm(60) } as Tub)).toBe(6);
    expect(mostHung(disc, { ...tub, width: mm(74.9), fill: mm(60) } as Tub)).toBe(4);
    expect(mostHung(piece, { kind: 'jug', water: si<'volume'>(1e-3) })).toBe(Infinity);
  });
  test('is not asked of a jug, which has no walls', () => {
    expect(fits({ tub: { waterByJug: amount(50, 'mL') } })).toBeNull();
  });
});
