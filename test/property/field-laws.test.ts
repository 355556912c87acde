import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conjugateGradients } from '../../src/lib/core/field/conjugate-gradients.ts';
import { gridOf } from '../../src/lib/core/field/grid.ts';
import { currentsOf, joinMetal } from '../../src/lib/core/field/metal.ts';
import type { Lead } from '../../src/lib/core/field/metal.ts';
import { bathNetwork } from '../../src/lib/core/field/operator.ts';
import { faultsOf } from '../../src/lib/core/field/faults.ts';
import type { FieldProblem, Plate } from '../../src/lib/core/field/problem.ts';
import { solveField } from '../../src/lib/core/field/solve.ts';
import { channel } from '../fixtures/field-forms.ts';
import { MM, none, problemOf, publishedCells } from '../fixtures/field-cells.ts';
import type { PublishedCell } from '../fixtures/field-cells.ts';
import { chunk } from './runs.ts';

const mm = (min: number, max: number) => fc.integer({ min, max }).map((n) => n * MM);
const all = { kind: 'all' } as const;

/** A piece with a bare window and a plate somewhere opposite, in a small tub. */
const problem: fc.Arbitrary<FieldProblem> = fc
  .record({
    length: mm(30, 60),
    width: mm(24, 40),
    fill: mm(20, 36),
    size: fc.tuple(mm(6, 18), mm(6, 16)),
    window: fc.tuple(
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.double({ min: 0.3, max: 1, noNaN: true }),
    ),
    plate: fc.tuple(mm(6, 20), mm(6, 18)),
    shift: fc.double({ min: 0, max: 1, noNaN: true }),
    bothFaces: fc.boolean(),
    thickness: fc.constantFrom(0, 2 * MM),
    law: fc.constantFrom('none', 'linear', 'butlerVolmer'),
  })
  .map(({ length, width, fill, size, window, plate, shift, bothFaces, thickness, law }) => {
    const at = (free: number, wide: number, high: number) => ({
      y0: free * (width - wide),
      y1: free * (width - wide) + wide,
      z0: (fill - high) / 2,
      z1: (fill - high) / 2 + high,
    });
    const [wide, high] = size;
    const outline = at(0.5, wide, high);
    const rect = {
      y0: outline.y0,
      y1: outline.y0 + Math.max(3 * MM, window[0] * wide),
      z0: outline.z0,
      z1: outline.z0 + Math.max(3 * MM, window[1] * high),
    };
    const piece: Plate = {
      electrode: 'anode',
      x: length / 4,
      thickness,
      outline,
      bare: { minus: bothFaces ? all : none, plus: { kind: 'rects', rects: [rect] } },
    };
    const cathode: Plate = {
      electrode: 'cathode',
      x: (3 * length) / 4,
      thickness: 0,
      outline: at(shift, ...plate),
      bare: { minus: all, plus: all },
    };
    const surface =
      law === 'none'
        ? none
        : law === 'linear'
          ? ({ kind: 'linear', resistance: 1e-4 } as const)
          : ({ kind: 'butlerVolmer', slope: 0.05, exchange: 5 } as const);
    return {
      box: { length, width, fill },
      conductivity: 10,
      plates: [piece, cathode],
      kinetics: { anode: surface, cathode: surface },
      volts: 2,
      spacing: 2 * MM,
    };
  });

describe('any cell', () => {
  test('keeps current, energy and the bounds of potential, in at most 20 iterations', () => {
    fc.assert(
      fc.property(problem, (given) => {
        expect(faultsOf(given)).toEqual([]);
        const solution = solveField(given, { tolerance: 1e-11 });
        expect(solution.converged).toBe(true);
        expect(solution.balance).toBeLessThan(1e-8);
        expect(solveField(given).iterations).toBeLessThanOrEqual(20);
        for (const potential of solution.potentials) {
          expect(potential).toBeGreaterThanOrEqual(-1e-9);
          expect(potential).toBeLessThanOrEqual(2 + 1e-9);
        }
        // in the bath and at both surfaces
        expect(solution.dissipation / (2 * solution.current)).toBeCloseTo(1, 7);
      }),
      chunk(10),
    );
  });

  test('passes current in proportion to conductivity and size, without surfaces that cost', () => {
    const cell = publishedCells['OFF20'] as PublishedCell;
    const once = solveField(problemOf(cell, 4 * MM)).resistance;
    expect(solveField(problemOf(cell, 4 * MM, { conductivity: 5 })).resistance / once).toBeCloseTo(2, 6);
    expect(solveField(problemOf(cell, 4 * MM, { volts: 7 })).resistance / once).toBeCloseTo(1, 6);
  });
});

describe('order of convergence', () => {
  const order = (errors: readonly number[]): number =>
    Math.log2(Math.abs((errors[0] as number) / (errors[1] as number)));
  test('is 0.9 and more at the edges of a mask without the correction', () => {
    const errors = [20, 40].map(
      (cells) => channel(1, cells, { edgeCorrection: false, growth: 1 }).reduced / 0.693904 - 1,
    );
    expect(order(errors)).toBeGreaterThan(0.9);
  });
  test('is 1.9 and more where nothing is sharp', () => {
    // one wall held at cos(πy/W), the other at 0: half of it passes κ·coth(πL/W) for each metre of depth
    const [length, width, kappa] = [40 * MM, 40 * MM, 10];
    const exact = (kappa * MM) / Math.tanh((Math.PI * length) / width);
    const error = (cells: number): number => {
      const spacing = width / cells;
      const grid = gridOf({
        box: { length, width, fill: MM },
        conductivity: kappa,
        plates: [],
        kinetics: { anode: none, cathode: none },
        volts: 1,
        spacing,
      });
      const free = { passes: new Map(), solid: new Uint8Array(grid.cells) };
      const network = bathNetwork(grid, free, kappa);
      const { nx, start } = network;
      const leads = [...grid.y.centres.entries()].flatMap(([j, y]): Lead[] => {
        const conductance = (kappa * spacing * MM) / (spacing / 2);
        const face = { conductance, faces: [j], offset: 0 };
        return [
          { ...face, n: start + nx * j, potential: Math.cos((Math.PI * y) / width) },
          { ...face, n: start + nx * j + nx - 1, potential: 0, faces: [cells] },
        ];
      });
      const f = joinMetal(network, leads);
      const u = new Float64Array(network.length);
      const axes = [grid.x, grid.y, grid.z] as const;
      conjugateGradients(network, axes, f, u, { tolerance: 1e-12 });
      const currents = currentsOf(leads, u, cells + 1);
      return currents.slice(0, cells / 2).reduce((sum, one) => sum + one, 0) / exact - 1;
    };

    expect(order([20, 40].map(error))).toBeGreaterThan(1.9);
    expect(order([10, 20].map(error))).toBeGreaterThan(1.9);
  });
});

describe('what cannot be solved is said', () => {
  const good = problemOf(publishedCells['OFF20'] as PublishedCell, MM);
  const [piece, plate] = good.plates as [Plate, Plate];
  const faults = (more: Partial<FieldProblem>) => faultsOf({ ...good, ...more });
  test('a good one has no fault', () => {
    expect(faults({})).toEqual([]);
  });
  test('a piece larger than the tub', () => {
    const outline = { ...piece.outline, y1: 0.09 };
    expect(faults({ plates: [{ ...piece, outline }, plate] })[0]).toMatchObject({
      id: 'outsideTub',
      plate: 0,
      found: 0.09,
      most: 0.08,
    });
  });
  test('plates that touch, or a gap behind the plate', () => {
    expect(faults({ plates: [piece, { ...plate, x: piece.x }] })[0]).toMatchObject({ id: 'platesTouch' });
    expect(faults({ plates: [piece, { ...plate, x: -0.01 }] })[0]).toMatchObject({
      id: 'outsideTub',
      plate: 1,
    });
  });
  test('nothing bare', () => {
    const bare = { minus: none, plus: { kind: 'rects', rects: [] } } as const;
    expect(faults({ plates: [{ ...piece, bare }, plate] })).toEqual([
      { id: 'nothingBare', electrode: 'anode' },
    ]);
  });
  test('a mask finer than the grid', () => {
    const rects = [{ y0: 0.02, y1: 0.0203, z0: 0.02, z1: 0.03 }];
    const bare = { minus: none, plus: { kind: 'rects', rects } } as const;
    expect(faults({ plates: [{ ...piece, bare }, plate] })[0]).toMatchObject({ id: 'maskTooFine', plate: 0 });
  });
  test('a size, conductivity or voltage that is none', () => {
    expect(faults({ conductivity: 0 })).toEqual([{ id: 'notPositive', field: 'conductivity', found: 0 }]);
    expect(faults({ volts: NaN })).toEqual([{ id: 'notPositive', field: 'volts', found: NaN }]);
    expect(faults({ spacing: Infinity })).toMatchObject([{ id: 'notPositive', field: 'spacing' }]);
  });
  test('a plate whose lengths are none, or run backwards', () => {
    const first = (more: Partial<Plate>) => faults({ plates: [{ ...piece, ...more }, plate] });
    const { outline } = piece;
    expect(first({ x: NaN })).toMatchObject([{ id: 'badLength', plate: 0, field: 'x' }]);
    expect(first({ thickness: -1e-3 })).toMatchObject([{ field: 'thickness', found: -1e-3 }]);
    expect(first({ mask: -1e-3 })).toMatchObject([{ field: 'mask' }]);
    expect(first({ outline: { ...outline, z0: outline.z1, z1: outline.z0 } })).toMatchObject([
      { field: 'outline', found: outline.z0 - outline.z1 },
    ]);
    const disc = { kind: 'disc', y: NaN, z: 0.03, radius: 0.01 } as const;
    expect(first({ bare: { minus: none, plus: disc } })).toMatchObject([{ field: 'plus' }]);
  });
  test('bare metal beyond its plate', () => {
    const rects = [{ ...piece.outline, y1: piece.outline.y1 + 0.005 }];
    const bare = { minus: none, plus: { kind: 'rects', rects } } as const;
    const [fault] = faults({ plates: [{ ...piece, bare }, plate] });
    expect(fault).toMatchObject({ id: 'bareOutsidePlate', plate: 0, most: 0 });
    expect((fault as { found: number }).found).toBeCloseTo(0.005, 9);
  });
});

test('a run that is called off says so', () => {
  const stopped = solveField(problemOf(publishedCells['OFF20'] as PublishedCell, 4 * MM), {
    shouldStop: () => true,
  });
  expect(stopped).toMatchObject({ stopped: true, converged: false });
});
