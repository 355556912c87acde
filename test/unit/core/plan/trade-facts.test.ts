import { describe, expect, test } from 'vitest';
import { practice } from '../../../../src/lib/core/facts/limits.ts';
import { printPlan } from '../../../../src/lib/words/en/printed-plan.ts';
import type { Settings } from '../../../../src/lib/core/plan/plan.ts';
import { amount, cuff, figureOf, pendant, planOf, proposedPlanOf, tokens } from '../../../fixtures/jobs.ts';
import { ruleCases } from '../../../fixtures/rule-cases.ts';

function byAmps(settings: Settings | null) {
  if (settings?.control !== 'amps') throw new Error('amps were to be proposed');
  return settings;
}

describe('common practice, no source:', () => {
  test('the pendant is proposed by amps, at 0.4 A', () => {
    expect(byAmps(proposedPlanOf(pendant()).settings).amps).toBe(0.4);
  });
  test('with the volts knob at 8 V as a ceiling', () => {
    expect(byAmps(proposedPlanOf(pendant()).settings).ceiling).toBe(8);
  });
  test('and a display below 5 V', () => {
    expect(byAmps(proposedPlanOf(pendant()).settings).display.value).toBeLessThan(5);
  });
  test.each([
    ['no ammeter', { 'supply.showsAmps': false }],
    ['no amps limit', { 'supply.maxAmps': undefined }],
  ])('silver in sodium nitrate by volts works at 7 V (%s)', (_why, patch) => {
    expect(proposedPlanOf(pendant(), patch).settings).toMatchObject({ control: 'volts', volts: 7 });
  });
  test('copper by volts works at 5 V', () => {
    expect(proposedPlanOf(cuff()).settings).toMatchObject({ control: 'volts', volts: 5 });
  });
  test('silver starts near 5 V', () => {
    expect(practice.silverStartVolts.value).toBe(5);
  });
  test('salt stands for two hours at least, better a night', () => {
    const line = printPlan(planOf(pendant()))
      .steps.flatMap(({ lines }) => lines)
      .find(({ id }) => id === 'let-stand');
    expect(line?.text).toMatch(/2\u00a0h at least, better a night/);
  });
  test('a tub a quarter the size of one that takes 100 g takes 25 g', () => {
    expect(practice.smallTubSalt.value * 4).toBe(practice.largeTubSalt.value);
    const saltIn = (mL: number) =>
      figureOf(planOf(pendant(), { tub: { waterByJug: amount(mL, 'mL') } }), 'salt_mass').value;
    expect(saltIn(2000) / saltIn(500)).toBeCloseTo(4, 9);
  });
  test('the same by the tub’s sides, but for what the parts push aside (2 %)', () => {
    const saltIn = (length: number) =>
      figureOf(planOf(pendant(), { 'tub.length': amount(length, 'mm') }), 'salt_mass').value;
    expect(saltIn(480) / saltIn(120) / 4).toBeGreaterThan(0.98);
    expect(saltIn(480) / saltIn(120) / 4).toBeLessThan(1.02);
  });
  test('the trade bites slower than the model: the pendant says so', () => {
    expect(figureOf(planOf(pendant()), 'practice_over_model').value).toBeGreaterThan(3);
  });
});

describe('common practice, no source: never as high as 10 V', () => {
  const plans = Object.values(ruleCases)
    .flatMap(({ speaks, silent }) => [planOf(speaks), planOf(silent)])
    .filter(({ refusals }) => refusals.length === 0);

  test('there are plans to look at', () => {
    expect(plans.length).toBeGreaterThan(30);
  });
  test('in any volts figure', () => {
    for (const { figures } of plans) expect(figures.volts?.high).toBeLessThanOrEqual(9.5);
  });
  test('in any proposed setting', () => {
    for (const { settings } of plans) {
      if (settings === null) throw new Error('a plan without settings');
      const volts =
        settings.control === 'amps' ? [settings.ceiling, settings.display.high] : [settings.volts];
      expect(Math.max(...volts)).toBeLessThanOrEqual(9.5);
    }
  });
  test('in any line of work', () => {
    const lines = plans.flatMap((plan) => printPlan(plan).steps.flatMap((step) => step.lines));
    const volts = lines.flatMap(({ text }) =>
      [...text.matchAll(/([\d.]+)\u00a0V\b/g)].map(([, n]) => Number(n)),
    );
    expect(volts.length).toBeGreaterThan(30);
    expect(Math.max(...volts)).toBeLessThanOrEqual(9.5);
  });
  test('also when amps alone are typed high', () => {
    const { settings } = planOf(tokens(), {
      'supply.amps': amount(100, 'A'),
      'supply.maxVolts': amount(9.9, 'V'),
    });
    expect(byAmps(settings).ceiling).toBeLessThanOrEqual(9.5);
  });
});
