import { describe, expect, test } from 'vitest';
import { bathAfter, metalTaken, nextName } from '../../../src/lib/session/shelve-bath.ts';
import { figureOf, pendant, planOf, tokens } from '../../fixtures/jobs.ts';
import { aBath } from '../notebook/records-for-test.ts';

const plan = planOf(pendant());
const charge = figureOf(plan, 'charge').value;
const silver = figureOf(plan, 'dissolved_metal.Ag').value;
const fresh = { id: 'new', name: 'SILVER 3' };
const draw = { plan, chargeAh: charge, where: 'shelf', now: 5 } as const;

describe('metal taken into the bath', () => {
  test('is what the plan foresees at its own charge, and in proportion else', () => {
    expect(metalTaken(plan, charge)['Ag']).toBeCloseTo(silver, 6);
    expect(metalTaken(plan, charge / 2)['Ag']).toBeCloseTo(silver / 2, 6);
    expect(metalTaken(plan, 0)['Ag'] ?? 0).toBe(0);
  });
  test('leaves out what the bath held before', () => {
    const used = planOf(pendant(), { 'bath.dissolved': { Ag: { value: 500, unit: 'mg/L' } } });
    expect(figureOf(used, 'dissolved_metal.Ag').value).toBeGreaterThan(500);
    expect(metalTaken(used, charge)['Ag']).toBeCloseTo(silver, 3);
  });
});

describe('the bath afterwards', () => {
  test('a new one is named, dated and measured', () => {
    expect(bathAfter(draw, undefined, fresh)).toMatchObject({
      id: 'new',
      name: 'SILVER 3',
      salt: 'NaNO3',
      strength: 60,
      metalGroup: 'silver',
      madeAt: 5,
      lastUsedAt: 5,
      where: 'shelf',
      volumeMl: Math.round(figureOf(plan, 'bath_volume').value),
    });
    expect(bathAfter(draw, undefined, fresh).chargeAh).toBeCloseTo(charge, 9);
  });
  test('one from the shelf keeps its name and gains charge and metal', () => {
    const after = bathAfter(draw, aBath('b'), fresh);
    expect(after).toMatchObject({ id: 'b', name: 'SILVER 1', madeAt: aBath('b').madeAt, lastUsedAt: 5 });
    expect(after.chargeAh).toBeCloseTo(0.4 + charge, 9);
    expect(after.dissolved['Ag']).toBeCloseTo(120 + silver, 1);
  });
  test('what the shelf holds counts, not what the job thought it held', () => {
    const stale = planOf(pendant(), {
      'bath.record': 'SILVER 1',
      'bath.dissolved': { Ag: { value: 10, unit: 'mg/L' } },
    });
    const after = bathAfter({ ...draw, plan: stale }, aBath('b', { dissolved: { Ag: 900 } }), fresh);
    expect(after.dissolved['Ag']).toBeCloseTo(900 + silver, 0);
  });
  test('nothing passed since changes nothing but the place', () => {
    const bath = aBath('b');
    const after = bathAfter({ ...draw, chargeAh: 0, where: 'handed-over' }, bath, fresh);
    expect(after).toEqual({ ...bath, where: 'handed-over', lastUsedAt: 5 });
  });
  test('copper and brass share a jar', () => {
    const brass = planOf(tokens());
    const after = bathAfter({ ...draw, plan: brass }, undefined, { id: 'x', name: 'COPPER AND BRASS 1' });
    expect(after).toMatchObject({ metalGroup: 'copper and brass', name: 'COPPER AND BRASS 1' });
  });
});

test('names are counted on by metal group and never given twice', () => {
  expect(nextName('silver', [])).toBe('SILVER 1');
  const two = aBath('b', { name: 'SILVER 4', where: 'handed-over' });
  expect(nextName('silver', [aBath('a'), two])).toBe('SILVER 5');
  expect(nextName('silver', [aBath('a', { name: 'my silver' })])).toBe('SILVER 1');
  expect(nextName('copper and brass', [aBath('a')])).toBe('COPPER AND BRASS 1');
});
