import { describe, expect, test } from 'vitest';
import type { Bare, FieldProblem, Plate } from '../../src/lib/core/field/problem.ts';
import { solveField } from '../../src/lib/core/field/solve.ts';
import { MM, none } from '../fixtures/field-cells.ts';

/**
 * Long plates seen end on, one cell thick, so that they can be refined far beyond what a tub allows. The
 * answer wanted is that of cells down to a sixteenth of a millimetre, without the correction at edges,
 * carried on to cells of no size by the order its sharpest edge allows.
 */

const all = { kind: 'all' } as const;

interface Place {
  /** of the face away from the other plate, and up to where, mm */
  readonly x: number;
  readonly thickness?: number;
  readonly from: number;
  readonly to: number;
  readonly minus: Bare;
  readonly plus: Bare;
}

const bareFrom = (y0: number, y1: number): Bare => ({
  kind: 'rects',
  rects: [{ y0: y0 * MM, y1: y1 * MM, z0: 0, z1: MM }],
});
const plateOf = (electrode: Plate['electrode'], own: Place): Plate => ({
  electrode,
  x: own.x * MM,
  thickness: (own.thickness ?? 0) * MM,
  outline: { y0: own.from * MM, y1: own.to * MM, z0: 0, z1: MM },
  bare: { minus: own.minus, plus: own.plus },
});

const cathode: Place = { x: 60, from: 20, to: 44, minus: all, plus: all };
const problemWith = (anode: Place, opposite: Place, spacing: number): FieldProblem => ({
  box: { length: 80 * MM, width: 64 * MM, fill: MM },
  conductivity: 10,
  plates: [plateOf('anode', anode), plateOf('cathode', opposite)],
  kinetics: { anode: none, cathode: none },
  volts: 1,
  spacing: spacing * MM,
});

/** @param order of the error without the correction: twice the exponent of the sharpest edge */
function refined(anode: Place, opposite: Place, order: number): number {
  const at = (spacing: number): number =>
    solveField({ ...problemWith(anode, opposite, spacing), growth: 1.15, edgeCorrection: false }).resistance;
  const [coarse, fine] = [at(1 / 8), at(1 / 16)];
  return fine + (fine - coarse) / (2 ** order - 1);
}

const window = bareFrom(24, 40);
const sheet = { x: 20, from: 20, to: 44 };
const masked = { minus: none, plus: all };
const bare = { minus: all, plus: all };
const board = { x: 20, from: 16, to: 48 };
const cases: readonly { name: string; order: number; anode: Place; opposite?: Place }[] = [
  { name: 'a window in a thin board', order: 1, anode: { ...board, minus: none, plus: window } },
  { name: 'a window that looks away', order: 1, anode: { ...board, minus: window, plus: none } },
  { name: 'a sheet bare on both faces', order: 1, anode: { ...sheet, ...bare } },
  { name: 'a sheet bare to its edge, its back masked', order: 1 / 2, anode: { ...sheet, ...masked } },
  { name: 'a plate of 1 mm, its back masked', order: 2 / 3, anode: { ...sheet, ...masked, thickness: 1 } },
  { name: 'a plate of 2 mm, its back masked', order: 2 / 3, anode: { ...sheet, ...masked, thickness: 2 } },
  { name: 'a plate of 1 mm, bare on both faces', order: 2 / 3, anode: { ...sheet, ...bare, thickness: 1 } },
  {
    name: 'plates off the grid',
    order: 1,
    anode: { x: 20.7, from: 15.3, to: 47.9, minus: none, plus: bareFrom(23.4, 40.8) },
    opposite: { x: 58.6, from: 19.7, to: 45.2, ...bare },
  },
];

describe('an edge of bare metal, against the same cell on a far finer grid', () => {
  test.each(cases)('$name', ({ order, anode, opposite = cathode }) => {
    const wanted = refined(anode, opposite, order);
    const off = (spacing: number, edgeCorrection = true): number =>
      solveField({ ...problemWith(anode, opposite, spacing), edgeCorrection }).resistance / wanted - 1;
    expect(Math.abs(off(1))).toBeLessThan(0.003);
    expect(Math.abs(off(2))).toBeLessThan(0.005);
    expect(off(1, false)).toBeGreaterThan(0.009);
  });
});
