import { describe, expect, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import type { JobInput } from '../../../src/lib/core/plan/job-input.ts';
import { draftFrom } from '../../../src/lib/session/draft.ts';
import { filledDraft, jobFileOf } from '../../../src/lib/session/job-file.ts';

function jobFrom(answers: Readonly<Record<string, string>>): JobInput {
  const parsed = parseJob(jobFileOf(filledDraft(draftFrom(answers))), { areaLater: true });
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
}

const through = { 'piece.purpose': 'through', 'piece.through': 'yes' };

describe('right through', () => {
  test('is the sheet’s thickness, in whatever it was measured', () => {
    expect(jobFrom({ ...through, 'piece.thickness': '0.8' }).piece.depth).toBeCloseTo(0.0008, 9);
    const gauge = { 'piece.thickness': '20', 'piece.thickness.unit': 'gauge-BS' };
    expect(jobFrom({ ...through, ...gauge }).piece.depth).toBeCloseTo(0.000812, 6);
  });

  test('follows when the thickness is typed anew', () => {
    expect(jobFrom({ ...through, 'piece.depth': '1', 'piece.thickness': '0.5' }).piece.depth).toBeCloseTo(
      0.0005,
      9,
    );
  });

  test('is half of it from each of both faces', () => {
    const both = { ...through, 'piece.faces': 'both', 'piece.thickness': '1' };
    expect(jobFrom(both).piece.depth).toBeCloseTo(0.0005, 9);
    const gauge = { 'piece.thickness': '20', 'piece.thickness.unit': 'gauge-SWG' };
    expect(jobFrom({ ...both, ...gauge }).piece.depth).toBeCloseTo(0.0009144 / 2, 8);
  });

  test('leaves a gauge that does not exist to be complained of', () => {
    const gauge = { 'piece.thickness': '99', 'piece.thickness.unit': 'gauge-SWG', 'piece.faces': 'both' };
    expect(parseJob(jobFileOf(draftFrom({ ...through, ...gauge })), { areaLater: true })).toHaveProperty(
      'faults',
    );
  });
});

describe('what is on the piece', () => {
  test.each([
    ['', 'sterling-925'],
    ['seams stones glue hinges', 'sterling-925'],
    ['plating', 'plated'],
    ['seams oldsolder', 'cadmium-solder'],
    ['plating oldsolder', 'cadmium-solder'],
  ])('%j counts as %s', (attached, metal) => {
    expect(jobFrom({ 'piece.attached': attached }).piece.metal).toBe(metal);
  });
});

describe('stand-ins for blanks', () => {
  test('are as long in inches', () => {
    const inches = jobFrom({ 'unit.length': 'in', 'cathode.size': 'own', 'cathode.gap': '1.18' });
    expect(inches.piece.width).toBeCloseTo(0.03, 4);
    expect(inches.cathode.height).toBeCloseTo(0.04, 4);
  });

  test('take a millimetre of sheet, whatever gauge is chosen', () => {
    expect(jobFrom({ 'piece.thickness.unit': 'gauge-BS' }).piece.thickness).toBeCloseTo(0.001, 9);
  });

  test('leave the area for later when the one asked for is blank', () => {
    const job = jobFrom({ 'piece.area': 'area', 'piece.openShare': '30' });
    expect(job.piece.openArea).toBeNull();
  });
});
