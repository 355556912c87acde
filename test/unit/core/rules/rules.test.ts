import { describe, expect, test } from 'vitest';
import { refusalRules, warningRules } from '../../../../src/lib/core/rules/index.ts';
import { cautionTexts, refusalTexts } from '../../../../src/lib/words/en/rules.ts';
import { printPlan } from '../../../../src/lib/words/en/printed-plan.ts';
import { planOf, refusedBy, warnedBy } from '../../../fixtures/jobs.ts';
import { ruleCases } from '../../../fixtures/rule-cases.ts';

const ids = (rules: readonly { id: string }[]) => rules.map(({ id }) => id);

test('every rule has its own id, its text and its case', () => {
  const all = [...ids(refusalRules), ...ids(warningRules)];
  expect(new Set(all).size).toBe(all.length);
  expect(all.toSorted()).toEqual(Object.keys(ruleCases).toSorted());
  expect(Object.keys(refusalTexts).toSorted()).toEqual(ids(refusalRules).toSorted());
  expect(Object.keys(cautionTexts).toSorted()).toEqual(ids(warningRules).toSorted());
});

test.each([...refusalRules, ...warningRules])('$id names its sources', ({ sources }) => {
  expect(sources.length).toBeGreaterThan(0);
});

describe.each(refusalRules)('$id', ({ id, step }) => {
  test('refuses its job, with a reason and a way on', () => {
    const plan = planOf(ruleCases[id].speaks);
    expect(refusedBy(plan)).toContain(id);
    const printed = printPlan(plan).refusals.find(({ rule }) => rule === id);
    expect(printed).toMatchObject({ rule: id, step });
    expect(printed?.text).not.toBe('');
    expect(printed?.instead).not.toBe('');
  });
  test('leaves nothing to go by: no figures, settings, cautions or steps', () => {
    const plan = planOf(ruleCases[id].speaks);
    expect(plan).toMatchObject({ figures: {}, settings: null, cautions: [], instructions: [] });
    expect(printPlan(plan)).toMatchObject({ figures: {}, settings: null, cautions: [], steps: [] });
  });
  test('is silent about the neighbouring job', () => {
    expect(refusedBy(planOf(ruleCases[id].silent))).not.toContain(id);
  });
});

describe.each(warningRules)('$id', ({ id, step, signal }) => {
  test('warns in its job, before its step', () => {
    const plan = planOf(ruleCases[id].speaks);
    expect(refusedBy(plan)).toEqual([]);
    const printed = printPlan(plan).cautions.find(({ rule }) => rule === id);
    expect(printed).toMatchObject({ rule: id, step, signal });
    expect(printed?.text).not.toBe('');
  });
  test('is silent in the neighbouring job', () => {
    expect(warnedBy(planOf(ruleCases[id].silent))).not.toContain(id);
  });
});
