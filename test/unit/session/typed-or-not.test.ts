import { describe, expect, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import type { FigureId } from '../../../src/lib/core/plan/outcome.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { checkBasisOf } from '../../../src/lib/procedure/check-basis.ts';
import { draftFrom } from '../../../src/lib/session/draft.ts';
import { jobFileOf } from '../../../src/lib/session/job-file.ts';
import { planDraft } from '../../../src/lib/work/plan-draft.ts';
import { figureOf, jobOf, patched, pendant } from '../../fixtures/jobs.ts';

const whole = {
  'piece.width': '30',
  'piece.height': '40',
  'piece.thickness': '1',
  'piece.area': 'share',
  'piece.openShare': '35',
  'tub.length': '120',
  'tub.width': '80',
  'tub.fill': '60',
};
const fileOf = (answers: Readonly<Record<string, string>>): object =>
  jobFileOf(draftFrom({ ...whole, ...answers }));

const evidenceOf = (plan: Plan, figure: FigureId, input: string): string | undefined =>
  figureOf(plan, figure).working.inputs.find(({ id }) => id === input)?.evidence;

const planned = (answers: Readonly<Record<string, string>> = {}): Plan => planJob(jobOf(fileOf(answers)));

describe('the working of a figure says of each answer', () => {
  test('that it was left at the default, or typed', () => {
    expect(evidenceOf(planned(), 'cell_resistance', 'gap')).toBe('atDefault');
    expect(evidenceOf(planned({ 'cathode.gap': '35' }), 'cell_resistance', 'gap')).toBe('yourInput');
    expect(evidenceOf(planned(), 'charge', 'wanted_depth')).toBe('atDefault');
    expect(evidenceOf(planned({ 'piece.polish': '0.02' }), 'charge', 'wanted_depth')).toBe('yourInput');
    expect(evidenceOf(planned(), 'charge', 'bare_area')).toBe('yourInput');
  });

  test('that it is typed where a job file states it, whatever its value', () => {
    expect(evidenceOf(planJob(jobOf(pendant())), 'cell_resistance', 'gap')).toBe('yourInput');
    const listed = patched(pendant(), { untyped: ['cathode.gap'] });
    expect(evidenceOf(planJob(jobOf(listed)), 'cell_resistance', 'gap')).toBe('atDefault');
  });

  test('that a recipe and knobs were proposed', () => {
    const copper = {
      'piece.metal': 'C11000',
      'bath.salt': 'NaCl',
      'bath.strength': '50',
      'bath.water': 'tap',
    };
    expect(evidenceOf(planned({ ...copper, 'bath.for': 'copper' }), 'salt_mass', 'strength')).toBe(
      'proposed',
    );
    expect(evidenceOf(planned({ ...copper, 'bath.for': 'own' }), 'salt_mass', 'strength')).toBe('yourInput');
    const typed = fileOf({});
    const { plan } = planDraft({ typed, filled: typed });
    if (plan === null) throw new Error('no plan');
    expect(evidenceOf(plan, 'current', 'set_amps')).toBe('proposed');
  });
});

test('a job file leaves untyped what it does not state', () => {
  const { untyped } = jobOf(patched(pendant(), { 'piece.count': undefined, paper: undefined }));
  expect(untyped).toEqual(expect.arrayContaining(['piece.count', 'paper', 'bath.chargePassed']));
  expect(untyped).not.toContain('cathode.sideways');
  expect(untyped).not.toContain('cathode.gap');
});

test('whether an answer was typed makes none stale', () => {
  const [stated, listed] = [pendant(), patched(pendant(), { untyped: ['cathode.gap', 'bath.strength'] })];
  expect(checkBasisOf(planJob(jobOf(listed)))).toEqual(checkBasisOf(planJob(jobOf(stated))));
});

test('a path that no field has is no path of an untyped field', () => {
  expect(parseJob(patched(pendant(), { untyped: ['piece.colour'] }))).toEqual({
    faults: [{ path: 'untyped.0', found: '"piece.colour"', expected: 'the path of a field' }],
  });
});
