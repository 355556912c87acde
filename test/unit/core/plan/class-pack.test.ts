import { describe, expect, test } from 'vitest';
import { limits, practice } from '../../../../src/lib/core/facts/limits.ts';
import { defaultReadingUnits } from '../../../../src/lib/core/job/reading-units.ts';
import { classPack } from '../../../../src/lib/core/plan/class-pack.ts';
import type { ClassAsked } from '../../../../src/lib/core/plan/class-pack.ts';
import { layOutOf } from '../../../../src/lib/core/plan/lay-out.ts';
import type { LayOutId } from '../../../../src/lib/core/plan/lay-out.ts';
import type { Amount } from '../../../../src/lib/core/rules/rule.ts';
import { afterLines, beforeLines, eveningRows, timeText } from '../../../../src/lib/words/en/class.ts';
import { needLines } from '../../../../src/lib/words/en/class-needs.ts';
import { amount, cuff, figureOf, planOf, tokens } from '../../../fixtures/jobs.ts';

const four: ClassAsked = { stations: 4, learners: 2, adults: 2, minutes: 120 };
const plan = planOf(tokens());
const of = (asked: Partial<ClassAsked> = {}, one = plan) => classPack(one, { ...four, ...asked });

describe('a class pack', () => {
  test('counts heads, hands and eyes: nobody in the room without goggles, two pairs of gloves each', () => {
    const pack = of();
    expect([pack.people, pack.gloves, pack.goggles, pack.supplies, pack.pieces]).toEqual([10, 20, 12, 4, 48]);
    expect(of({ learners: 3, adults: 1 }).people).toBe(13);
    const needs = needLines(pack, defaultReadingUnits);
    expect(needs.filter((line) => line.startsWith('12 pairs of splash goggles'))).toHaveLength(1);
    expect(needs).toContain('10 aprons');
  });
  test('mixes as many baths as there are stations, each as one job’s', () => {
    const pack = of();
    expect(pack.bathEach.salt).toBe(figureOf(plan, 'salt_mass').value);
    expect(pack.salt).toBeCloseTo(4 * pack.bathEach.salt, 9);
    expect(pack.waste).toBeCloseTo(4 * (figureOf(plan, 'bath_volume').value / 1e3 + 0.5), 9);
    expect(beforeLines(plan, pack).join(' ')).toMatch(/Mix 4 baths: 457\s?g of sodium nitrate/);
    expect(afterLines(pack).join(' ')).toMatch(/Cu \d+\s?mg\/L, Zn \d+\s?mg\/L/);
  });
  test('adds up what one station needs', () => {
    const valueOf = (times: number, id: LayOutId, param: string): number => {
      const found = layOutOf(plan, times).find((line) => line.id === id)?.params[param];
      return (found as Amount).value;
    };
    const pack = of();
    expect(pack.needs).toEqual(layOutOf(plan, 4));
    // a jug of litres, with what each tub takes
    const litres = (4 * figureOf(plan, 'water_volume').value) / 1e3;
    expect(valueOf(4, 'water', 'water')).toBeGreaterThanOrEqual(litres);
    expect(valueOf(4, 'water', 'water')).toBeLessThan(litres + 0.05);
    expect(valueOf(4, 'salt', 'mass')).toBeGreaterThanOrEqual(pack.salt);
    expect(valueOf(4, 'salt', 'mass')).toBeLessThan(pack.salt + 1);
    expect(valueOf(4, 'sheet', 'count')).toBe(pack.pieces);
    const squares = 48 * 2.5 ** 2;
    expect(valueOf(4, 'sheet', 'area')).toBeCloseTo(squares, 9);
    expect(valueOf(4, 'leads', 'wires')).toBe(4 * valueOf(1, 'leads', 'wires'));
    const lines = needLines(pack, defaultReadingUnits).join('\n');
    expect(lines).toMatch(/48 pieces of brass 70\/30, 25\s?mm by 25\s?mm, 1\.02\s?mm thick/);
    expect(lines).toContain('4 plates to hang opposite: stainless steel');
    expect(lines).toContain('52 clips with their wires');
    expect(lines).toContain('8 rinse tubs');
    expect(lines).toContain('4 supplies');
  });
  test('needs for every station a battery where that gives the current', () => {
    const battery = planOf(tokens(), {
      supply: { kind: 'battery', control: 'volts', volts: amount(6, 'V'), showsAmps: false },
    });
    const lines = needLines(of({}, battery), defaultReadingUnits).join('\n');
    expect(lines).toContain('4 batteries');
    expect(lines).not.toContain('supplies');
  });
  test('lets the baths stand before the evening until they are clear', () => {
    const pack = of();
    expect(pack.standing).toBe(60 * practice.dissolveHours.value);
    expect(beforeLines(plan, pack).join(' ')).toMatch(/Let them stand 2\s?h at least/);
    const [first, second] = eveningRows(pack);
    expect(first).toMatchObject({ id: 'standing', begins: '−2:00', bar: null });
    expect(second?.begins).toBe('0:00');
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
    // no more digits than are shown: what is chosen is what the cards print
    expect(fittingDepth).toBe(Number(fittingDepth.toPrecision(2)));
    expect(of({}, shallower).over).toBe(0);
    expect(timeText(of(), defaultReadingUnits)).toMatch(
      /^Too long by \d+\s?min: .* A depth of 0\.0\d+\s?mm would fit/,
    );
    expect(of({ minutes: 60 }).fittingDepth).toBeNull();
  });
  test('rounds the depth that fits down, never up', () => {
    const bite = plan.settings?.minutes.value ?? 0;
    for (let minutes = 90; minutes < 150; minutes += 3) {
      const { fittingDepth, over } = of({ minutes });
      if (fittingDepth === null) continue;
      const exact = (plan.job.piece.depth * 1e6 * (bite - over)) / bite;
      expect(fittingDepth).toBeLessThanOrEqual(exact);
      expect(fittingDepth).toBeGreaterThan(0.9 * exact);
    }
  });
  test('proposes no shallower bite for a piece that is to be bitten right through', () => {
    const thin = {
      'piece.thickness': amount(0.1, 'mm'),
      'piece.depth': amount(0.1, 'mm'),
      'piece.through': true,
    };
    const through = of({}, planOf(tokens(), thin));
    expect(through.over).toBeGreaterThan(0);
    expect(through.fittingDepth).toBeNull();
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
