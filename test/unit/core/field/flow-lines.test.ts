import { describe, expect, test } from 'vitest';
import { flowLines } from '../../../../src/lib/core/field/flow-lines.ts';
import { solveField } from '../../../../src/lib/core/field/solve.ts';
import { MM, none, problemOf, publishedCells } from '../../../fixtures/field-cells.ts';
import type { PublishedCell } from '../../../fixtures/field-cells.ts';

const linesOf = (name: string, count = 12) => {
  const problem = problemOf(publishedCells[name] as PublishedCell, 2 * MM);
  return { problem, lines: flowLines(solveField(problem), problem, count) };
};

describe('ways of the current, seen from above', () => {
  test('go straight across between plates that fill the tub', () => {
    const all = { kind: 'all' } as const;
    const wall = { y0: 0, y1: 0.08, z0: 0, z1: 0.06 };
    const problem = {
      box: { length: 0.12, width: 0.08, fill: 0.06 },
      conductivity: 10,
      plates: [
        { electrode: 'anode', x: 0.04, thickness: 0, outline: wall, bare: { minus: none, plus: all } },
        { electrode: 'cathode', x: 0.08, thickness: 0, outline: wall, bare: { minus: all, plus: none } },
      ],
      kinetics: { anode: none, cathode: none },
      volts: 1,
      spacing: 2 * MM,
    } as const;
    const lines = flowLines(solveField(problem), problem, 8);
    expect(lines).toHaveLength(8);
    for (const [n, line] of lines.entries()) {
      // equal currents of an even field: evenly spaced
      for (const [, y] of line) expect(y).toBeCloseTo((0.08 * (n + 0.5)) / 8, 5);
      expect(line[0]?.[0]).toBeCloseTo(0.04, 9);
      expect(line.at(-1)?.[0]).toBeCloseTo(0.08, 9);
    }
  });
  test('all reach the plate, never leave the bath, and never go backwards through a board', () => {
    for (const name of ['DUCT', 'G40', 'C4X', 'OFF0', 'OFF20', 'STRIPES', 'WALLCATH', 'SPOT']) {
      const { problem, lines } = linesOf(name);
      const cathode = problem.plates.find(({ electrode }) => electrode === 'cathode');
      expect(lines.length, name).toBe(12);
      for (const line of lines) {
        const [x, y] = line.at(-1) ?? [NaN, NaN];
        expect(x, name).toBeCloseTo(cathode?.x ?? NaN, 6);
        expect(y).toBeGreaterThanOrEqual((cathode?.outline.y0 ?? NaN) - 2 * MM);
        expect(y).toBeLessThanOrEqual((cathode?.outline.y1 ?? NaN) + 2 * MM);
        for (const [u, v] of line) {
          expect(u).toBeGreaterThanOrEqual(-1e-9);
          expect(u).toBeLessThanOrEqual(0.12 + 1e-9);
          expect(v).toBeGreaterThanOrEqual(-1e-9);
          expect(v).toBeLessThanOrEqual(0.08 + 1e-9);
        }
      }
    }
  });
  test('lie closer where the plate is nearer: a shifted plate draws them to its side', () => {
    const { problem, lines } = linesOf('OFF20');
    const anode = problem.plates.find(({ electrode }) => electrode === 'anode');
    const middle = ((anode?.outline.y0 ?? NaN) + (anode?.outline.y1 ?? NaN)) / 2;
    const shift =
      lines.reduce((sum, line) => sum + ((line.at(-1)?.[1] ?? NaN) - (line[0]?.[1] ?? NaN)), 0) /
      lines.length;
    expect(lines.filter((line) => (line[0]?.[1] ?? 0) > middle)).not.toHaveLength(0);
    expect(shift).toBeGreaterThan(5 * MM);
  });
});
