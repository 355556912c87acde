import { describe, expect, test } from 'vitest';
import { refusalRules, warningRules } from '../../../../src/lib/core/rules/index.ts';
import type { WarningId } from '../../../../src/lib/core/rules/index.ts';
import { checks } from '../../../../src/lib/procedure/checks.ts';
import { cautionTexts } from '../../../../src/lib/words/en/rules.ts';
import { checkTexts } from '../../../../src/lib/words/en/checks.ts';
import { elementNames } from '../../../../src/lib/words/en/materials.ts';
import { printPlan } from '../../../../src/lib/words/en/printed-plan.ts';
import { cuff, pendant, planOf, refusedBy, warnedBy } from '../../../fixtures/jobs.ts';
import { hazardTable, spokenOf } from '../../../fixtures/hazards.ts';
import { ruleCases } from '../../../fixtures/rule-cases.ts';

const ruleIds: readonly string[] = [...refusalRules, ...warningRules].map(({ id }) => id);
const checkIds: readonly string[] = checks.map(({ id }) => id);

test('the table holds H1 to H31, each once', () => {
  expect(hazardTable.map(({ id }) => id)).toEqual(Array.from({ length: 31 }, (_, i) => `H${i + 1}`));
});

describe.each(hazardTable)('$id $hazard', ({ rules, checks: asked, id }) => {
  test('has a rule or a check that is there, with its words and its case', () => {
    expect(rules.length + asked.length).toBeGreaterThan(0);
    expect(rules.filter((rule) => !ruleIds.includes(rule) || !(rule in ruleCases))).toEqual([]);
    expect(asked.filter((check) => !checkIds.includes(check) || !(check in checkTexts))).toEqual([]);
  });
  test('is spoken of in words', () => {
    for (const [rule, words] of spokenOf[id] ?? []) expect(cautionTexts[rule as WarningId]).toMatch(words);
  });
});

test('no check asks "OK": each has a right answer and a wrong one', () => {
  for (const check of checks) {
    if (check.kind !== 'choice') continue;
    expect(check.options.some(({ ok }) => ok) && check.options.some(({ ok }) => !ok), check.id).toBe(true);
  }
});

const textOf = (plan: ReturnType<typeof planOf>, rule: string): string => {
  const printed = printPlan(plan);
  return (
    printed.cautions.find((one) => one.rule === rule)?.text ??
    printed.refusals.find((one) => one.rule === rule)?.text ??
    ''
  );
};

describe('in proportion:', () => {
  test('copper in salt water is planned, with an open window, and no refusal', () => {
    const plan = planOf(cuff());
    expect(refusedBy(plan)).toEqual([]);
    expect(textOf(plan, 'chlorine')).toMatch(
      /^Open window while it bites: next to no chlorine.* Only if the current falls away/,
    );
  });
  test('nitrate says nothing of chlorine', () => {
    expect(warnedBy(planOf(pendant()))).not.toContain('chlorine');
  });
});

describe('stock is refused with its reason and its way on', () => {
  test.each([
    ['gold', /do not dissolve gold/],
    ['titanium', /oxide stops the current/],
    ['plated', /thin skin/],
    ['galvanised', /zinc fizzes off/],
    ['cadmium-solder', /cadmium/],
    ['Al-1100', /pits it/],
  ])('%s', (metal, why) => {
    expect(textOf(planOf(cuff(), { 'piece.metal': metal }), 'unsuitable-stock')).toMatch(why);
  });
  test('unknown yellow metal: magnet and scratch, then as leaded brass, not for sale', () => {
    const refusal = printPlan(planOf(cuff(), { 'piece.metal': 'unknown-yellow' })).refusals[0];
    expect(refusal?.instead).toMatch(/magnet.*Scratch.*leaded brass C360.*do not sell/);
  });
  test('leaded brass is planned at home with lead’s cautions, and refused for sale', () => {
    const home = planOf(cuff(), { 'piece.metal': 'C36000', 'place.use': 'home' });
    expect(refusedBy(home)).toEqual([]);
    expect(warnedBy(home)).toContain('leaded-brass');
    expect(home.figures['dissolved_metal.Pb']?.value).toBeGreaterThan(0);
    const sold = planOf(cuff(), { 'piece.metal': 'C36000', 'place.use': 'selling' });
    expect(refusedBy(sold)).toEqual(['lead-for-sale']);
  });
});

test.each([
  ['mild-steel', 'Cu'],
  ['mild-steel', 'Ag'],
  ['C11000', 'Ag'],
] as const)('%s takes %s out of a bath, so they are kept apart', (metal, held) => {
  const plan = planOf(cuff(), {
    'piece.metal': metal,
    'cathode.metal': 'stainless',
    'bath.dissolved': { [held]: { value: 10, unit: 'mg/L' } },
  });
  expect(refusedBy(plan)).toContain('mixed-metals');
  expect(textOf(plan, 'mixed-metals')).toContain(`holds ${elementNames[held]}`);
});

describe('the law', () => {
  const silverIn = (country: string | undefined, use = 'home') =>
    planOf(pendant(), { 'place.country': country, 'place.use': use });
  test('closes nitrates to the public in Denmark, and only there', () => {
    expect(refusedBy(silverIn('DK'))).toContain('salt-closed-to-public');
    for (const country of ['SE', 'GB', 'US', undefined])
      expect(refusedBy(silverIn(country))).not.toContain('salt-closed-to-public');
    expect(refusedBy(planOf(cuff(), { 'place.country': 'DK' }))).toEqual([]);
  });
  test('has its say on watched sales in the Union and in Britain', () => {
    expect(warnedBy(silverIn('FR'))).toContain('buying-is-watched');
    expect(warnedBy(silverIn('GB'))).toContain('buying-is-watched');
    expect(warnedBy(silverIn('US'))).not.toContain('buying-is-watched');
  });
});
