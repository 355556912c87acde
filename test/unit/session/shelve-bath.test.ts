import { describe, expect, test } from 'vitest';
import { bathNow, withEvent } from '../../../src/lib/notebook/bath-ledger.ts';
import { bathAfter, metalTaken, nextName } from '../../../src/lib/session/shelve-bath.ts';
import { figureOf, pendant, planOf, tokens } from '../../fixtures/jobs.ts';
import { aBath } from '../notebook/records-for-test.ts';

const plan = planOf(pendant());
const charge = figureOf(plan, 'charge').value;
const silver = figureOf(plan, 'dissolved_metal.Ag').value;
const fresh = { id: 'new', name: 'SILVER 3' };
const draw = { job: 'j', plan, chargeAh: charge, where: 'shelf', now: 5 } as const;

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
    const after = bathAfter(draw, undefined, fresh);
    expect(after).toMatchObject({ id: 'new', name: 'SILVER 3', salt: 'NaNO3', metalGroup: 'silver' });
    const now = bathNow(after);
    expect(now).toMatchObject({ strength: 60, madeAt: 5, lastUsedAt: 5, where: 'shelf', jobs: ['j'] });
    expect(now.volumeMl).toBe(Math.round(figureOf(plan, 'bath_volume').value));
    expect(now.chargeAh).toBeCloseTo(charge, 5);
    expect(now.dissolved['Ag']).toBeCloseTo(silver, 0);
  });
  test('one from the shelf keeps its name and gains charge and metal', () => {
    const after = bathAfter(draw, aBath('b'), fresh);
    expect(after).toMatchObject({ id: 'b', name: 'SILVER 1' });
    expect(bathNow(after).chargeAh).toBeCloseTo(0.4 + charge, 5);
    // 120 mg were in its litre; the job's silver comes from its own volume
    const litres = figureOf(plan, 'bath_volume').value / 1000;
    expect(bathNow(after).heldMg['Ag']).toBeCloseTo(120 + silver * litres, 0);
  });
  test('what the shelf holds counts, not what the job thought it held', () => {
    const stale = planOf(pendant(), {
      'bath.record': 'SILVER 1',
      'bath.dissolved': { Ag: { value: 10, unit: 'mg/L' } },
    });
    const litres = figureOf(stale, 'bath_volume').value / 1000;
    const after = bathAfter({ ...draw, plan: stale }, aBath('b'), fresh);
    expect(bathNow(after).heldMg['Ag']).toBeCloseTo(120 + silver * litres, 0);
  });
  test('a job that comes again is counted once, with its last word', () => {
    const once = bathAfter({ ...draw, chargeAh: charge / 2 }, aBath('b'), fresh);
    const twice = bathAfter({ ...draw, now: 6 }, once, fresh);
    expect(bathNow(twice).chargeAh).toBeCloseTo(0.4 + charge, 5);
    const back = bathAfter({ ...draw, chargeAh: charge / 2, now: 7 }, twice, fresh);
    expect({ ...bathNow(back), lastUsedAt: 0 }).toEqual({ ...bathNow(once), lastUsedAt: 0 });
    // and nothing that was written is gone
    expect(back.events.slice(0, twice.events.length)).toEqual(twice.events);
  });
  test('two jobs in one bath add up in order', () => {
    const first = bathAfter(draw, undefined, fresh);
    const second = bathAfter({ ...draw, job: 'k', now: 9 }, first, fresh);
    expect(bathNow(second)).toMatchObject({ jobs: ['j', 'k'], lastUsedAt: 9 });
    expect(bathNow(second).chargeAh).toBeCloseTo(2 * charge, 5);
  });
  test('handed over and then kept after all, it is on the shelf', () => {
    const gone = bathAfter({ ...draw, where: 'handed-over' }, aBath('b'), fresh);
    expect(bathNow(gone).where).toBe('handed-over');
    expect(bathNow(bathAfter({ ...draw, now: 6 }, gone, fresh)).where).toBe('shelf');
  });
  test('copper and brass share a jar', () => {
    const brass = planOf(tokens());
    const after = bathAfter({ ...draw, plan: brass }, undefined, { id: 'x', name: 'COPPER AND BRASS 1' });
    expect(after).toMatchObject({ metalGroup: 'copper and brass', name: 'COPPER AND BRASS 1' });
  });
});

describe('a bath that is topped up', () => {
  test('keeps its metal and is weaker by the water', () => {
    const now = bathNow(
      withEvent(aBath('b'), { type: 'topped-up', at: Date.UTC(2026, 0), waterMl: 980, saltG: 0 }),
    );
    expect(now.strength).toBeCloseTo(30, 6);
    expect(now.heldMg['Ag']).toBe(120);
    expect(now.dissolved['Ag']).toBeCloseTo((120 * 1000) / 1980, 3);
  });
  test('with salt at its own strength keeps that', () => {
    const event = { type: 'topped-up', at: Date.UTC(2026, 0), waterMl: 500, saltG: 30 } as const;
    expect(bathNow(withEvent(aBath('b'), event)).strength).toBeCloseTo(60, 6);
  });
});

test('names are counted on by metal group and never given twice', () => {
  expect(nextName('silver', [])).toBe('SILVER 1');
  const two = aBath('b', { name: 'SILVER 4' });
  expect(nextName('silver', [aBath('a'), two])).toBe('SILVER 5');
  expect(nextName('silver', [aBath('a', { name: 'my silver' })])).toBe('SILVER 1');
  expect(nextName('copper and brass', [aBath('a')])).toBe('COPPER AND BRASS 1');
});
