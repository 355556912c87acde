import { describe, expect, test } from 'vitest';
import { limits } from '../../../../src/lib/core/facts/limits.ts';
import { defaultReadingUnits } from '../../../../src/lib/core/job/reading-units.ts';
import { classPack } from '../../../../src/lib/core/plan/class-pack.ts';
import type { ClassAsked } from '../../../../src/lib/core/plan/class-pack.ts';
import { afterLines, beforeLines, bringLines, timeText } from '../../../../src/lib/words/en/class.ts';
import { amount, cuff, figureOf, planOf, tokens } from '../../../fixtures/jobs.ts';

const four: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };
const plan = planOf(tokens());
const of = (asked: Partial<ClassAsked> = {}, one = plan) => classPack(one, { ...four, ...asked });

describe('a class pack', () => {
  test('counts heads, hands and eyes: nobody in the room without goggles, two pairs of gloves each', () => {
    const pack = of();
    expect([pack.people, pack.gloves, pack.goggles, pack.supplies, pack.pieces]).toEqual([10, 20, 12, 4, 48]);
    expect(of({ learners: 3, adults: 1 }).people).toBe(13);
    expect(bringLines(pack)[0]).toMatch(/^12 pairs of splash goggles/);
  });
  test('mixes as many baths as there are stations, each as one job’s', () => {
    const pack = of();
    expect(pack.bathEach.salt).toBe(figureOf(plan, 'salt_mass').value);
    expect(pack.salt).toBeCloseTo(4 * pack.bathEach.salt, 9);
    expect(pack.waste).toBeCloseTo(4 * (figureOf(plan, 'bath_volume').value / 1e3 + 0.5), 9);
    expect(beforeLines(plan, pack).join(' ')).toMatch(/Mix 4 baths: 457\s?g of sodium nitrate/);
    expect(afterLines(pack).join(' ')).toMatch(/Cu \d+\s?mg\/L, Zn \d+\s?mg\/L/);
  });
  test('adds up what all plates give off', () => {
    expect(of().air?.flow).toBeCloseTo(4 * figureOf(plan, 'hydrogen_air').high, 9);
    expect(of({ stations: 8 }).air?.opening).toBeCloseTo(8 * figureOf(plan, 'hydrogen_opening').high, 9);
  });
  test('lays the evening end to end; one adult starts one supply after another', () => {
    const { parts, over } = of();
    parts.reduce((end, { from, minutes }) => {
      expect(from).toBe(end);
      return from + minutes;
    }, 0);
    const starting = (asked: Partial<ClassAsked>) =>
      of(asked).parts.find(({ id }) => id === 'starting')?.minutes;
    expect([starting({}), starting({ adults: 1 }), starting({ stations: 5 })]).toEqual([6, 12, 9]);
    expect(over).toBeGreaterThan(0);
    expect(of({ minutes: 480 }).over).toBe(0);
    expect(timeText(of({ minutes: 480 }), defaultReadingUnits)).toMatch(
      /^It takes \d+\s?min of 480\s?min\.$/,
    );
  });
  test('names a depth that fits, and that one does fit', () => {
    const { fittingDepth } = of();
    if (fittingDepth === null) throw new Error('no depth');
    const shallower = planOf(tokens(), { 'piece.depth': amount(fittingDepth / 1e3, 'mm') });
    expect(of({}, shallower).over).toBeLessThanOrEqual(1);
    expect(timeText(of(), defaultReadingUnits)).toMatch(
      /^Too long by \d+\s?min: .* A depth of 0\.0\d+\s?mm would fit/,
    );
    expect(of({ minutes: 60 }).fittingDepth).toBeNull();
  });
});

describe('a class is not held', () => {
  const copper = (room: number) =>
    planOf(cuff(), { 'place.use': 'teaching', 'place.room': amount(room, 'm3') });
  test('where one station’s current could fill the room with chlorine', () => {
    const small = of({ stations: 6 }, copper(40));
    expect(small.chlorine).toBeGreaterThan(limits.chlorineDanger.value);
    expect(small.stops).toEqual(['chlorine']);
    const large = of({ stations: 6 }, copper(400));
    expect(large.chlorine).toBeLessThan(limits.chlorineDanger.value);
    expect(large.stops).toEqual([]);
    expect(beforeLines(copper(400), large).join(' ')).toContain('all supplies off, everybody out');
    // each station adds what is likely of it
    expect(of({ stations: 12 }, copper(400)).chlorine).toBeGreaterThan(large.chlorine ?? Infinity);
  });
  test('in salt water while the room is not known', () => {
    const unknown = planOf(cuff(), { 'place.use': 'teaching', 'place.room': undefined });
    expect(of({}, unknown).stops).toEqual(['room-unknown']);
    // a nitrate bath gives off none
    expect(of({}, planOf(tokens(), { 'place.room': undefined })).stops).toEqual([]);
  });
  test('with a job that a plan refuses, or one without its bare area', () => {
    expect(of({}, planOf(tokens(), { 'bath.salt': 'NH4NO3' })).stops).toEqual(['refused']);
    const { openShare: _share, ...piece } = tokens()['piece'] as Record<string, unknown>;
    expect(() => planOf({ ...tokens(), piece })).toThrow(/openArea/);
  });
});
