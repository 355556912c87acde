import { describe, expect, test } from 'vitest';
import { biteMap } from '../../../../src/lib/core/cell/bite-map.ts';
import { solvedResistance } from '../../../../src/lib/core/cell/resistance.ts';
import {
  cellKey,
  fieldProblemOf,
  rememberingSolver,
  solveCell,
} from '../../../../src/lib/core/cell/solved-field.ts';
import { faultsOf } from '../../../../src/lib/core/field/faults.ts';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';
import { cellOf } from '../../../fixtures/cells.ts';
import type { Cell } from '../../../fixtures/cells.ts';
import { cuff, figureOf, jobOf, pendant, tokens } from '../../../fixtures/jobs.ts';

const solved = (cell: Cell) => {
  const { setup, openArea } = cellOf(cell);
  const field = solveCell(setup, si<'area'>(openArea));
  if (field === null) throw new Error('not solved');
  return { field, ...solvedResistance(field, setup, si<'conductivity'>(10)) };
};

describe('the cell of a job, solved', () => {
  test('is that of two plates that fill the tub, exactly', () => {
    const { resistance, field } = solved({ window: [80, 60], plate: [80, 60], gap: 40 });
    expect(resistance).toBeCloseTo(0.8333333333, 5);
    expect(field.evenness).toEqual([1, 1].map((one) => expect.closeTo(one, 4) as number));
  });
  test('is the published one of two bare sheets, but for the millimetre that a real sheet is thick', () => {
    const { resistance } = solved({ window: [32, 20], plate: [32, 20], gap: 40, faces: 'both' });
    expect(Math.abs(resistance / 1.659336 - 1)).toBeLessThan(0.03);
  });
  test('stands between bare parts that are scattered and close together, and both are in its range', () => {
    const { field, resistance, spread } = solved({
      window: [20, 14],
      board: [40, 40],
      plate: [28, 20],
      gap: 40,
    });
    expect(field.compact).toBeGreaterThan(field.scattered);
    for (const end of [field.compact, field.scattered])
      expect(Math.abs(Math.log(end / 10 / resistance))).toBeLessThanOrEqual(1.96 * spread);
  });
  test('is not solved for a jug, which has no walls, nor for pieces that cannot hang side by side', () => {
    const job = jobOf(pendant());
    const area = job.piece.openArea ?? si<'area'>(1e-4);
    expect(
      fieldProblemOf({ ...job, tub: { kind: 'jug', water: si<'volume'>(5e-4) } }, area, false),
    ).toBeNull();
    expect(fieldProblemOf({ ...job, piece: { ...job.piece, count: 60 } }, area, false)).toBeNull();
  });
  test('of a batch hangs every piece apart from the others', () => {
    const job = jobOf(tokens());
    const problem = fieldProblemOf(job, job.piece.openArea ?? si<'area'>(1e-4), false);
    expect(problem?.plates).toHaveLength(job.piece.count + 1);
    expect(problem && faultsOf(problem)).toEqual([]);
  });
});

describe('a drawing', () => {
  const job = jobOf(pendant());
  const columns = 8;
  const half = (left: string, right: string) => ({
    columns,
    rows: 1,
    cells: left.repeat(columns / 2) + right.repeat(columns / 2),
  });
  const of = (design: { columns: number; rows: number; cells: string }) => {
    const piece = { ...job.piece, design };
    const share = Array.from(design.cells).reduce((sum, one) => sum + parseInt(one, 16), 0) / 15 / columns;
    const area = si<'area'>(share * piece.faceArea);
    return { job: { ...job, piece }, area };
  };
  test('tells where the bare parts lie: one arrangement is solved, not two', () => {
    const { job: drawn, area } = of(half('f', '0'));
    const field = solveCell(drawn, area);
    expect(field?.scattered).toBe(field?.compact);
    const problem = fieldProblemOf(drawn, area, true);
    expect(problem && faultsOf(problem)).toEqual([]);
  });
  test('of bare metal all over is the face without a drawing', () => {
    const { job: drawn, area } = of(half('f', 'f'));
    const plain = solveCell(job, area);
    expect(solveCell(drawn, area)?.scattered).toBeCloseTo(plain?.scattered ?? NaN, 9);
  });
  test('bites thin stripes deeper than broad ones beside them', () => {
    const { job: drawn, area } = of(half('3', 'f'));
    const { map } = biteMap(drawn, area, 2e-3) ?? {};
    if (!map) throw new Error('not solved');
    const wide = map.columns.length - 1;
    const middle = Math.floor((map.rows.length - 1) / 2) * wide;
    const at = (share: number) => map.relative[middle + Math.floor(share * wide)] ?? NaN;
    expect(at(0.25)).toBeGreaterThan(2 * at(0.75));
  });
});

describe('a plan from the solved cell', () => {
  test.each([pendant, cuff, tokens])('says so, and how even the bite is: %o', (raw) => {
    const job = jobOf(raw());
    const plan = planJob(job, solveCell);
    const closed = planJob(job);
    const [ours, theirs] = [figureOf(plan, 'cell_resistance'), figureOf(closed, 'cell_resistance')];
    expect(ours.working.remarks).toContain('solved-field');
    expect(theirs.working.remarks).toContain('closed-form');
    // the stand-in knows what it does not know
    expect(ours.value).toBeGreaterThan(theirs.low);
    expect(ours.value).toBeLessThan(theirs.high);
    const evenness = figureOf(plan, 'evenness');
    expect(evenness.value).toBeGreaterThan(5);
    expect(evenness.value).toBeLessThan(100);
    expect(closed.figures.evenness).toBeUndefined();
  });
  test('falls back to the closed form, and says so, where a solution does not come to an end', () => {
    const job = jobOf(pendant());
    const area = job.piece.openArea ?? si<'area'>(0);
    expect(solveCell(job, area, { tolerance: 0 })).toBeNull();
    const plan = planJob(job, (setup, area) => solveCell(setup, area, { tolerance: 0 }));
    expect(figureOf(plan, 'cell_resistance')).toEqual(figureOf(planJob(job), 'cell_resistance'));
    expect(figureOf(plan, 'cell_resistance').working.remarks).toEqual(['closed-form']);
    expect(plan.figures.evenness).toBeUndefined();
  });
  test('solves nothing anew when only knobs, salt or depth change', () => {
    const job = jobOf(pendant());
    const solve = rememberingSolver();
    const area = job.piece.openArea ?? si<'area'>(1e-4);
    const first = solve(job, area);
    const other = { ...job, piece: { ...job.piece, depth: si<'length'>(2e-4) } };
    expect(cellKey(other, area)).toBe(cellKey(job, area));
    expect(solve(other, area)).toBe(first);
    const wider = { ...job, cathode: { ...job.cathode, gap: si<'length'>(0.02) } };
    expect(solve(wider, area)).not.toBe(first);
  });
  test('is the same to the last digit each time', () => {
    const job = jobOf(cuff());
    expect(JSON.stringify(planJob(job, solveCell))).toBe(JSON.stringify(planJob(job, solveCell)));
  });
});
