import { describe, expect, test } from 'vitest';
import { rememberingSolver } from '../../../../src/lib/core/cell/solved-field.ts';
import { layOutOf } from '../../../../src/lib/core/plan/lay-out.ts';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { ammeterGainFor } from '../../../../src/lib/core/plan/questions.ts';
import { readableIn } from '../../../../src/lib/core/plan/run-by-plan.ts';
import { weighingOf } from '../../../../src/lib/core/plan/weighing.ts';
import { checkBasisOf } from '../../../../src/lib/procedure/check-basis.ts';
import { checksOf } from '../../../../src/lib/procedure/checks.ts';
import { amount, cuff, jobOf, patched, pendant } from '../../../fixtures/jobs.ts';
import type { Raw } from '../../../fixtures/jobs.ts';

const having = (raw: Raw, has: readonly string[], scale?: number) =>
  jobOf(patched(raw, { workshop: { has, ...(scale === undefined ? {} : { scale: amount(scale, 'g') }) } }));
const linesOf = (raw: Raw, has: readonly string[], scale?: number): readonly string[] =>
  planJob(having(raw, has, scale)).instructions.map(({ id }) => id);

describe('a plan is made for what the workshop has', () => {
  test('only what can be read there is asked while it bites', () => {
    expect(readableIn(having(pendant(), ['thermometer']))).toEqual(['amps', 'volts', 'celsius']);
    expect(readableIn(having(cuff(), []))).toEqual([]);
    expect(readableIn(having(cuff(), ['multimeter']))).toEqual(['volts']);
  });

  test('a piece is weighed on a fine scale alone, and measured where there is a gauge', () => {
    expect(linesOf(pendant(), [], 0.1)).toEqual(expect.arrayContaining(['weigh-piece', 'dry-and-weigh']));
    expect(linesOf(pendant(), ['calliper'], 0.1)).toContain('dry-and-measure');
    const coarse = linesOf(pendant(), ['calliper'], 1);
    expect(coarse).toContain('dry-and-gauge');
    expect(coarse).not.toContain('weigh-piece');
    expect(linesOf(pendant(), [])).toContain('dry-and-look');
  });

  test('salt is weighed as the scale shows it; without one whole packets make a stock', () => {
    const grams = (scale?: number) => {
      const plan = planJob(having(pendant(), [], scale));
      return weighingOf(plan.job, plan.figures);
    };
    expect(grams(0.1)).toMatchObject({ kind: 'weigh', grams: 33.7 });
    expect(grams(1)?.grams).toBe(Math.round(grams(0.1)?.grams ?? 0));
    expect(grams()).toMatchObject({ kind: 'pour' });
    expect((grams()?.grams ?? 1) % 50).toBe(0);
    expect(linesOf(pendant(), [])).toEqual(
      expect.arrayContaining(['whole-salt', 'label-both', 'stock-pour']),
    );
    expect(linesOf(pendant(), [])).not.toContain('weigh-salt');
  });

  test('what is there is laid out, the rest is to be got', () => {
    const lines = layOutOf(planJob(having(pendant(), ['goggles', 'tray', 'multimeter'], 1)));
    const there = lines.filter(({ isThere }) => isThere).map(({ id }) => id);
    expect(there).toEqual(expect.arrayContaining(['goggles', 'tray', 'multimeter', 'scale']));
    expect(lines.find(({ id }) => id === 'gloves')).toMatchObject({ isThere: false });
    expect(lines.map(({ id }) => id)).not.toContain('thermometer');
  });

  test('the sign of the clips is measured where there is a meter, and only there', () => {
    const asked = (has: readonly string[]): readonly string[] =>
      checksOf('power', checkBasisOf(planJob(having(pendant(), has)))).map(({ id }) => id);
    expect(asked(['multimeter'])).toContain('meter-sign');
    expect(asked(['thermometer'])).not.toContain('meter-sign');
    // the wire is traced last, whatever the meter said
    expect(asked(['multimeter']).at(-1)).toBe('piece-clip');
    expect(linesOf(pendant(), ['multimeter'])).toContain('meter-clips-low');
    expect(linesOf(cuff(), ['multimeter'])).toContain('meter-clips');
  });

  test('a room that nothing leaves is refused; outdoors no size of room is asked', () => {
    const refusals = planJob(jobOf(patched(pendant(), { 'place.openings': 'none' }))).refusals;
    expect(refusals.map(({ rule }) => rule)).toEqual(['no-opening']);
    const outdoors = planJob(
      jobOf(patched(cuff(), { 'place.openings': 'outdoors', 'place.room': undefined })),
    );
    expect(outdoors.cautions.map(({ rule }) => rule)).not.toContain('chlorine-room-unknown');
  });
});

describe('what an ammeter would change', () => {
  const solve = rememberingSolver();
  test('is said in minutes where there is none: a narrower range', () => {
    const gain = ammeterGainFor(jobOf(patched(pendant(), { 'supply.showsAmps': false })), solve);
    const width = ({ low, high }: { low: number; high: number }): number => high / low;
    expect(gain).not.toBeNull();
    if (gain) expect(width(gain.with)).toBeLessThan(width(gain.without) / 1.5);
  });
  test('is nothing where amps are shown', () => {
    expect(ammeterGainFor(jobOf(pendant()), solve)).toBeNull();
  });
});
