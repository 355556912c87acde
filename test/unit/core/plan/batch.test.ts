import { describe, expect, test } from 'vitest';
import { solveCell } from '../../../../src/lib/core/cell/solved-field.ts';
import { piecesAtOnce } from '../../../../src/lib/core/plan/batch.ts';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { printPlan } from '../../../../src/lib/words/en/printed-plan.ts';
import { rackSummary } from '../../../../src/lib/words/en/rack.ts';
import { amount, cuff, figureOf, jobOf, patched, pendant, planOf, tokens } from '../../../fixtures/jobs.ts';

const adapter = (amps: number) => ({
  'supply.control': 'volts',
  'supply.kind': 'adapter',
  'supply.volts': amount(5, 'V'),
  'supply.maxAmps': amount(amps, 'A'),
  'supply.amps': undefined,
  'supply.maxVolts': undefined,
});
const lines = (plan: ReturnType<typeof planJob>) =>
  printPlan(plan).steps.flatMap(({ lines: own }) => own.map(({ id, text }) => ({ id, text })));

describe('a batch', () => {
  test('is not split while the supply carries it, nor where a knob holds the amps', () => {
    expect(planOf(tokens()).figures.pieces_at_once).toBeUndefined();
    expect(planOf(tokens(), adapter(100)).figures.pieces_at_once).toBeUndefined();
  });
  test('is split into what an adapter carries: those pieces alone stay within it, one more does not', () => {
    const asked = figureOf(planOf(tokens(), adapter(100)), 'current_asked').value;
    const plan = planOf(tokens(), adapter(asked / 2));
    const pieces = figureOf(plan, 'pieces_at_once').value;
    expect(pieces).toBeGreaterThan(0);
    expect(pieces).toBeLessThan(plan.job.piece.count);
    const of = (count: number) =>
      figureOf(planOf(tokens(), { ...adapter(asked / 2), 'piece.count': count }), 'current_asked').value;
    expect(of(pieces)).toBeLessThanOrEqual(asked / 2);
    expect(of(pieces + 1)).toBeGreaterThan(asked / 2);
    const told = lines(plan).find(({ id }) => id === 'batch-lots')?.text;
    expect(told).toContain(`Hang ${String(pieces)} at once`);
    // the charge of all would bite the few far too deep
    expect(told).toContain(`set the number of pieces to ${String(pieces)}`);
    expect(plan.cautions.map(({ rule }) => rule)).toContain('overloads-supply');
  });
  test('whose every piece is too much for the supply is not split but cautioned', () => {
    const plan = planOf(tokens(), adapter(0.002));
    expect(figureOf(plan, 'pieces_at_once').value).toBe(0);
    expect(lines(plan).map(({ id }) => id)).not.toContain('batch-lots');
    expect(plan.cautions.map(({ rule }) => rule)).toContain('overloads-supply');
  });
  test('counts down to the first number that the supply carries', () => {
    expect(piecesAtOnce(5, 3, (pieces) => pieces)).toBe(3);
    expect(piecesAtOnce(5, 9, (pieces) => pieces)).toBe(5);
    expect(piecesAtOnce(5, 0.5, (pieces) => pieces)).toBe(0);
  });
});

describe('what cannot be solved as it stands', () => {
  test('names how many hang side by side: with those the cell is solved', () => {
    const crowd = planJob(jobOf(patched(pendant(), { 'piece.count': 4 })), solveCell);
    expect(crowd.figures.evenness).toBeUndefined();
    expect(lines(crowd).find(({ id }) => id === 'batch-hangs')?.text).toContain('Only 2 hang side by side');
    const told = planJob(jobOf(patched(pendant(), { 'piece.count': 2 })), solveCell);
    expect(told.figures.evenness).toBeDefined();
    expect(lines(told).map(({ id }) => id)).not.toContain('batch-hangs');
  });
  test('names the cube that stands for water by the jug', () => {
    const plan = planJob(jobOf(patched(pendant(), { tub: { waterByJug: amount(1000, 'mL') } })), solveCell);
    expect(lines(plan).find(({ id }) => id === 'jug-as-cube')?.text).toMatch(/a cube of 100.mm/);
  });
});

describe('the rack', () => {
  test('gives each place its part of the current, all inside the liquid', () => {
    const plan = planJob(jobOf(tokens()), solveCell);
    const { rack, job, settings } = plan;
    if (!rack || settings?.control !== 'amps') throw new Error('no rack');
    expect(rack.places).toHaveLength(job.piece.count);
    expect(rack.places.reduce((sum, { amps }) => sum + amps, 0)).toBeCloseTo(settings.amps, 6);
    for (const { y, z } of rack.places) {
      expect(y - job.piece.width / 2).toBeGreaterThanOrEqual(-1e-9);
      expect(y + job.piece.width / 2).toBeLessThanOrEqual(rack.width + 1e-9);
      expect(z - job.piece.height / 2).toBeGreaterThanOrEqual(-1e-9);
      expect(z + job.piece.height / 2).toBeLessThanOrEqual(rack.fill + 1e-9);
    }
  });
  test('is none for one piece, and says which places are deepest and shallowest', () => {
    expect(planJob(jobOf(pendant()), solveCell).rack).toBeNull();
    const place = (relative: number) => ({ y: 0, z: 0, amps: 0.1, relative });
    const said = rackSummary({ width: 1, fill: 1, places: [place(1.2), place(0.8), place(1.2), place(0.8)] });
    expect(said).toBe('4 pieces: deepest at 1, 3 with 120 % of the mean, shallowest at 2, 4 with 80 %.');
    expect(rackSummary({ width: 1, fill: 1, places: [place(1), place(1.001)] })).toContain('alike');
  });
});

describe('the spread of a batch by position', () => {
  test('is told for the solved cell, alike at both ends of a row', () => {
    const job = jobOf(patched(tokens(), { 'piece.count': 3 }));
    const field = solveCell(job, job.piece.openArea ?? (0 as never));
    const [left = 0, middle = 0, right = 0] = (field?.pieces ?? []).map(({ relative }) => relative);
    expect(left).toBeCloseTo(right, 6);
    expect((left + middle + right) / 3).toBeCloseTo(1, 9);
    const figure = figureOf(planJob(job, solveCell), 'batch_evenness');
    expect(figure.value).toBeCloseTo((100 * Math.min(left, middle)) / Math.max(left, middle), 3);
  });
  test('is not told of one piece, nor without a solved cell', () => {
    expect(planJob(jobOf(cuff()), solveCell).figures.batch_evenness).toBeUndefined();
    expect(planOf(tokens()).figures.batch_evenness).toBeUndefined();
  });
});
