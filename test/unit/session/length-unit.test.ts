import { describe, expect, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { draftFrom } from '../../../src/lib/session/draft.ts';
import type { Draft } from '../../../src/lib/session/draft.ts';
import { fieldOf, jobFileOf } from '../../../src/lib/session/job-file.ts';
import {
  areaTyped,
  areaTypedCm2,
  depthTyped,
  detailTyped,
  lengthsIn,
  meansCm,
  mmText,
  mmTyped,
} from '../../../src/lib/session/length-unit.ts';
import { leastFault } from '../../../src/lib/words/en/artwork.ts';
import { faultText } from '../../../src/lib/words/en/faults.ts';

const typed = draftFrom({
  'piece.width': '30',
  'piece.thickness': '1',
  'cathode.gap': '30',
  'tub.length': '120,5',
  'tub.width': 'wide',
});

test('a change of unit keeps what is asked elsewhere as long as it was', () => {
  const inches = lengthsIn('in', typed);
  expect(inches).toEqual({
    ...{ 'cathode.gap': '1.18', 'tub.length': '4.74', 'unit.length': 'in' },
    ...{ 'piece.depth': '0.003937', 'piece.depth.unit': 'in', 'piece.openArea.unit': 'in2' },
  });
  expect(lengthsIn('mm', { ...typed, ...inches })).toEqual({
    'cathode.gap': '30',
    'tub.length': '120.4',
    'unit.length': 'mm',
    ...{ 'piece.depth': '0.1', 'piece.depth.unit': 'mm', 'piece.openArea.unit': 'cm2' },
  });
});

test('a thickness not yet typed follows, and the same unit changes nothing', () => {
  expect(lengthsIn('in', draftFrom({}))['piece.thickness.unit']).toBe('in');
  expect(lengthsIn('in', draftFrom({ 'piece.thickness.unit': 'gauge-BS' }))).not.toHaveProperty([
    'piece.thickness.unit',
  ]);
  expect(lengthsIn('mm', typed)).toEqual({});
});

const inchDraft = draftFrom({
  ...{ 'unit.length': 'in', 'piece.width': '1.2', 'piece.height': '1.5', 'piece.thickness': '0.04' },
  ...{ 'piece.thickness.unit': 'in', 'piece.depth.unit': 'in', 'piece.openArea.unit': 'in2' },
  ...{ 'piece.purpose': 'number', 'piece.area': 'area', 'piece.openArea': '0.8', 'piece.depth': '0.004' },
  ...{ 'cathode.gap': '1.18', 'tub.length': '5', 'tub.width': '4', 'tub.fill': '2.4' },
});
const pieceOf = (answers: Partial<Draft>) => {
  const parsed = parseJob(jobFileOf({ ...inchDraft, ...answers }));
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job.piece;
};
const faultsOf = (answers: Partial<Draft>): readonly string[] => {
  const draft = { ...inchDraft, ...answers };
  const parsed = parseJob(jobFileOf(draft));
  if (!('faults' in parsed)) return [];
  return parsed.faults.map((fault) => faultText(fault, fieldOf(fault, draft) ?? 'title'));
};

describe('typed in inches', () => {
  test('depth and bare area are kept in SI', () => {
    expect(pieceOf({}).depth).toBeCloseTo(0.004 * 0.0254, 12);
    expect(pieceOf({}).openArea).toBeCloseTo(0.8 * 0.0254 ** 2, 12);
  });
  test('what polishing takes off comes on top', () => {
    expect(pieceOf({ 'piece.polish': '0.05' }).depth).toBeCloseTo(0.004 * 0.0254 + 0.05e-3, 8);
    expect(pieceOf({ 'piece.polish': '0.05', 'piece.depth': '0.1', 'piece.depth.unit': 'mm' }).depth).toBe(
      0.15e-3,
    );
  });
  test('a draft from before stays in the units that it was typed in', () => {
    const before = draftFrom({ 'unit.length': 'in', 'piece.depth': '0.1', 'piece.openArea': '5' });
    const { 'piece.depth.unit': depth, 'piece.openArea.unit': area } = before;
    expect(pieceOf({ 'piece.depth': '0.1', 'piece.depth.unit': depth }).depth).toBeCloseTo(1e-4, 12);
    expect(pieceOf({ 'piece.openArea': '5', 'piece.openArea.unit': area }).openArea).toBeCloseTo(5e-4, 12);
  });
  test.each([
    [{ 'piece.depth': '3' }, 'The depth: found 3 in, expected 0.00003937 to 1.969 in (0.001 to 50 mm).'],
    [{ 'piece.depth': '0.05' }, 'The depth: found 0.05000 in, expected at most the thickness, 0.04000 in.'],
    [
      { 'piece.openArea': '2' },
      'The bare area: found 2.000 in², expected at most 1.800 in², the bitten faces of one piece.',
    ],
    [
      { 'piece.openArea': '0' },
      'The bare area: found 0 in², expected more than 0, at most 1550 in² (more than 0, at most 10000 cm²).',
    ],
  ])('a fault of %j states its bounds in inches', (answers, text) => {
    expect(faultsOf(answers)).toEqual([text]);
  });
  test('depth and area go over to inches and back', () => {
    const metric = draftFrom({ 'piece.depth': '0.15', 'piece.area': 'area', 'piece.openArea': '5,02' });
    const inches = { ...metric, ...lengthsIn('in', metric) };
    expect(inches).toMatchObject({
      ...{ 'piece.depth': '0.005906', 'piece.depth.unit': 'in' },
      ...{ 'piece.openArea': '0.7781', 'piece.openArea.unit': 'in2' },
    });
    expect(lengthsIn('mm', inches)).toMatchObject({
      ...{ 'piece.depth': '0.15', 'piece.depth.unit': 'mm' },
      ...{ 'piece.openArea': '5.02', 'piece.openArea.unit': 'cm2' },
    });
  });
  test('what stood as it was is still nobody’s own, and a typed depth is', () => {
    const untyped = (draft: Draft): readonly string[] =>
      (jobFileOf(draft) as { readonly untyped: readonly string[] }).untyped.filter(
        (path) => path !== 'units.length',
      );
    const left = { ...draftFrom({}), ...lengthsIn('in', draftFrom({})) };
    expect(untyped(left)).toEqual(untyped(draftFrom({})));
    expect(untyped({ ...left, 'piece.depth': '0.1' })).not.toContain('piece.depth');
  });
  test('a known depth, a drawing’s area and lengths beside a job take the typed unit', () => {
    expect([depthTyped(0.3, inchDraft), depthTyped(0.3, draftFrom({}))]).toEqual(['0.01181', '0.3']);
    expect([areaTyped(5.02, inchDraft), areaTyped(5.02, draftFrom({}))]).toEqual(['0.7781', '5.02']);
    expect(areaTypedCm2(inchDraft)).toBeCloseTo(0.8 * 2.54 ** 2, 9);
    expect(areaTypedCm2({ ...inchDraft, 'piece.openArea': 'much' })).toBeNull();
    const [mm, inch] = [
      { length: 'mm', temperature: 'degC' },
      { length: 'in', temperature: 'degF' },
    ] as const;
    expect([mmTyped('0,5', mm), mmTyped('0.5', inch), mmTyped('half', inch)]).toEqual([0.5, 12.7, null]);
    expect([mmText(60, mm), mmText(60, inch)]).toEqual(['60', '2.362']);
    expect([detailTyped('0.2', inch), detailTyped('0.1', inch), detailTyped('5', mm)]).toEqual([
      null,
      2.54,
      5,
    ]);
    const told = /to ([\d.]+)\u00a0in$/.exec(leastFault(inch))?.[1] ?? '';
    expect(detailTyped(told, inch)).toBeCloseTo(5, 2);
    expect(leastFault(mm)).toBe('0 to 5\u00a0mm');
  });
});

describe('centimetres', () => {
  const inMm = draftFrom({
    'piece.width': '2.5',
    'piece.height': '4',
    'piece.thickness': '1',
    'tub.length': '120',
  });
  test('a piece smaller than any jewel is asked whether it was typed in cm', () => {
    const sides = ['piece.width', 'piece.height'] as const;
    expect(meansCm(inMm, sides)).toBe(true);
    expect(meansCm({ ...inMm, 'piece.height': '8' }, sides)).toBe(false);
    expect(meansCm({ ...inMm, 'piece.height': '' }, sides)).toBe(false);
    expect(meansCm({ ...inMm, ...lengthsIn('cm', inMm) }, sides)).toBe(false);
  });
  test('the numbers of the piece stay, what was typed before keeps its size, sheet and depth stay in mm', () => {
    const inCm = { ...inMm, ...lengthsIn('cm', inMm) };
    expect(inCm).toMatchObject({
      'unit.length': 'cm',
      'piece.width': '2.5',
      'tub.length': '12',
      'piece.thickness.unit': 'mm',
      'piece.depth.unit': 'mm',
    });
    const parsed = parseJob(
      jobFileOf({
        ...inCm,
        'tub.width': '8',
        'tub.fill': '6',
        'piece.area': 'share',
        'piece.openShare': '30',
      }),
    );
    expect('job' in parsed && parsed.job.piece.width).toBeCloseTo(0.025, 9);
    expect('job' in parsed && parsed.job.tub).toMatchObject({ length: 0.12, width: 0.08 });
    const back = { ...inCm, ...lengthsIn('in', inCm) };
    expect(back['tub.length']).toBe('4.72');
  });
});
