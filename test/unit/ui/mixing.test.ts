import { describe, expect, test } from 'vitest';
import { boughtSaltIds, shelfSaltIds } from '../../../src/lib/core/facts/salts.ts';
import { workOut } from '../../../src/lib/ui/known/mixing.ts';
import type { MixDraft, MixField, MixWay } from '../../../src/lib/ui/known/mixing.ts';
import { saltName, saltRefusal } from '../../../src/lib/words/en/salt-names.ts';

const nothing: MixDraft = {
  'mix.salt': '',
  'mix.water': '',
  'mix.strength': '',
  'mix.massPercent': '',
  'mix.molarity': '',
  'mix.temperature': '20',
  'mix.volume': '',
  'mix.left': '',
  'mix.wanted': '',
  'mix.weight': '',
  'mix.measured': '100',
};
const ask = (way: MixWay, salt: string, typed: Partial<Record<MixField, string>>) =>
  workOut(way, salt, { ...nothing, ...typed }, { scale: 1, vessel: 1 });
const faultOf = (way: MixWay, salt: string, typed: Partial<Record<MixField, string>>) => {
  const answer = ask(way, salt, typed);
  return 'faults' in answer ? answer.faults[0] : undefined;
};

describe('two amounts', () => {
  test('10 % sodium chloride is 1.0707 g/cm³ and 1.832 mol/L (CRC Handbook, concentrative properties)', () => {
    const answer = ask('mix', 'NaCl', { 'mix.water': '1000', 'mix.massPercent': '10' });
    if ('faults' in answer || answer.value.kind !== 'mix') throw new Error('no answer');
    expect(answer.value.of.density).toBeCloseTo(1070.7, 1);
    expect(answer.value.of.molarity).toBeCloseTo(1.832, 3);
  });
  test('one, three, or two strengths are not two amounts', () => {
    for (const typed of [
      { 'mix.salt': '50' },
      { 'mix.salt': '50', 'mix.water': '1000', 'mix.strength': '50' },
      { 'mix.strength': '50', 'mix.massPercent': '5' },
    ])
      expect(faultOf('mix', 'NaCl', typed)?.fault.expected).toContain('one');
  });
  test('what is no number or not above zero is named with its field', () => {
    expect(faultOf('mix', 'NaCl', { 'mix.salt': 'ten', 'mix.water': '1' })).toEqual({
      field: 'mix.salt',
      fault: { path: 'mix.salt', found: 'ten', expected: 'a number' },
    });
    expect(faultOf('mix', 'NaCl', { 'mix.salt': '-3', 'mix.water': '1' })?.field).toBe('mix.salt');
  });
});

describe('a refusal', () => {
  test.each(boughtSaltIds)('of too much %s names a strength that is taken', (salt) => {
    const fault = faultOf('mix', salt, { 'mix.water': '1000', 'mix.strength': '9000' })?.fault;
    const nearest = /the nearest is ([\d.]+)\s(g\/L|%)$/.exec(fault?.expected ?? '');
    expect(nearest, fault?.expected).not.toBeNull();
    const field = nearest?.[2] === '%' ? 'mix.massPercent' : 'mix.strength';
    expect(ask('mix', salt, { 'mix.water': '1000', [field]: nearest?.[1] ?? '' })).toHaveProperty('value');
  });
  test('of too high a share by mass names one that is taken, the table’s end', () => {
    const typed = { 'mix.water': '1000', 'mix.massPercent': '30' };
    expect(faultOf('mix', 'NaCl', typed)?.fault.expected).toMatch(/^0 to 26\s%; the nearest is 26\s%$/);
    expect(ask('mix', 'NaCl', { ...typed, 'mix.massPercent': '26' })).toHaveProperty('value');
  });
  test('of salt and water together speaks of the strength they make', () => {
    const fault = faultOf('mix', 'NaCl', { 'mix.salt': '500', 'mix.water': '1000' })?.fault;
    expect(fault?.expected).toMatch(/^a strength of 0 to \d+(\.\d)?\sg\/L; the nearest is/);
    expect(fault?.found).toMatch(/^500\sg$/);
  });
  test('of a temperature is pinned to the temperature', () => {
    const fault = faultOf('mix', 'NaCl', { 'mix.salt': '5', 'mix.water': '100', 'mix.temperature': '95' });
    expect(fault?.field).toBe('mix.temperature');
    expect(fault?.fault.expected).toMatch(/°C$/);
  });
});

describe('jars', () => {
  const jar = { 'mix.volume': '1000', 'mix.strength': '50' };
  test('go up by salt, down by water, and not to where they are', () => {
    const up = ask('change', 'NaNO3', { ...jar, 'mix.wanted': '60' });
    const down = ask('change', 'NaNO3', { ...jar, 'mix.wanted': '40' });
    if ('faults' in up || up.value.kind !== 'change') throw new Error('no answer');
    if ('faults' in down || down.value.kind !== 'change') throw new Error('no answer');
    expect(up.value.of.addSalt).toBeGreaterThan(0);
    expect(up.value.of.addWater).toBe(0);
    expect(down.value.of.addWater).toBeGreaterThan(0);
    expect(down.value.of.addSalt).toBe(0);
    expect(faultOf('change', 'NaNO3', { ...jar, 'mix.wanted': '50' })?.field).toBe('mix.wanted');
  });
  test('that dried out take the water that left', () => {
    const topped = ask('top', 'NaNO3', { ...jar, 'mix.left': '800' });
    if ('faults' in topped || topped.value.kind !== 'change') throw new Error('no answer');
    expect(topped.value.of.addWater * 1e6).toBeCloseTo(200, -1);
    expect(faultOf('top', 'NaNO3', { ...jar, 'mix.left': '1000' })?.field).toBe('mix.left');
  });
  test('too heavy for the salt are refused by the weight', () => {
    expect(faultOf('weigh', 'NaCl', { 'mix.weight': '150' })?.field).toBe('mix.weight');
  });
});

describe('salts', () => {
  test('on the shelf have names of their own', () => {
    const names = shelfSaltIds.map(saltName);
    expect(new Set(names).size).toBe(names.length);
  });
  test('that make no bath say why, the others say nothing', () => {
    expect(saltRefusal('ZnSO4.7H2O')).toContain('bites badly');
    expect(boughtSaltIds.map(saltRefusal).every((text) => text === null)).toBe(true);
  });
});
