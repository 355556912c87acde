import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { dilute, strengthByWeight, strengthen, topUp } from '../../../../src/lib/core/chemistry/jars.ts';
import type { JarChange } from '../../../../src/lib/core/chemistry/jars.ts';
import { isRefused, mix, mixVolume, mostStrength } from '../../../../src/lib/core/chemistry/solutions.ts';
import type { Known, Mixed, SolutionRefusal } from '../../../../src/lib/core/chemistry/solutions.ts';
import { findSalt, shelfSaltIds } from '../../../../src/lib/core/facts/salts.ts';
import type { ShelfSalt } from '../../../../src/lib/core/facts/salts.ts';
import { si } from '../../../../src/lib/core/units/quantity.ts';

const at20 = si<'temperature'>(293.15);
const litre = si<'volume'>(1e-3);
const grams = (value: number) => si<'mass'>(value / 1000);
const perLitre = (value: number) => si<'massConcentration'>(value);

function named(id: string): ShelfSalt {
  const salt = findSalt(id);
  if (salt === null) throw new Error(`no salt ${id}`);
  return salt;
}
function ok<T extends object>(answer: T | SolutionRefusal): T {
  if (isRefused(answer)) throw new Error(JSON.stringify(answer));
  return answer;
}
const mixed = (id: string, known: Known): Mixed => ok(mix(named(id), known, at20));

describe('any two things known of a solution', () => {
  const strengths = { NaNO3: 60, 'CuSO4.5H2O': 100, 'Na2S2O3.5H2O': 200, AgNO3: 17, citric: 50 };
  test.each(Object.entries(strengths))('give the same solution of %s', (id, strength) => {
    const first = mixed(id, { water: litre, strength: perLitre(strength) });
    const ways: Known[] = [
      { salt: first.salt, water: first.water },
      { salt: first.salt, strength: first.strength },
      { salt: first.salt, massPercent: first.massPercent },
      { salt: first.salt, molarity: first.molarity },
      { water: first.water, massPercent: first.massPercent },
      { water: first.water, molarity: first.molarity },
    ];
    for (const way of ways) {
      const again = mixed(id, way);
      for (const key of Object.keys(first) as (keyof Mixed)[])
        expect(again[key] / first[key], `${key} from ${Object.keys(way).join()}`).toBeCloseTo(1, 6);
    }
  });

  test('conserve mass: water and salt weigh what the solution weighs', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...shelfSaltIds),
        fc.double({ min: 5, max: 200, noNaN: true }),
        (id, strength) => {
          const answer = mix(named(id), { water: litre, strength: perLitre(strength) }, at20);
          if (isRefused(answer)) return;
          expect(answer.volume * answer.density).toBeCloseTo(0.9982 + answer.salt, 3);
        },
      ),
    );
  });

  test('two strengths and no amount are no solution', () => {
    expect(mix(named('NaCl'), { massPercent: 5, molarity: 0.9 }, at20)).toEqual({ refused: 'needsAmount' });
    expect(mix(named('NaCl'), { salt: grams(5) }, at20)).toEqual({ refused: 'needsAmount' });
  });
});

describe('outside a table', () => {
  test('mass % is refused with the range and the nearest value', () => {
    expect(mix(named('NaHCO3'), { water: litre, massPercent: 6 }, at20)).toEqual({
      refused: 'outside',
      quantity: 'massPercent',
      unit: '%',
      found: 6,
      low: 0,
      high: 5,
      nearest: 5,
    });
  });
  test('more than dissolves is refused with what does', () => {
    const answer = mix(named('KNO3'), { water: litre, strength: perLitre(400) }, at20);
    expect(answer).toMatchObject({ refused: 'outside', quantity: 'strength', unit: 'g/L', found: 400 });
    expect((answer as { nearest: number }).nearest).toBeCloseTo(318.7, 0);
  });
  test('a temperature without a model of density is refused', () => {
    const warm = si<'temperature'>(303.15);
    expect(mix(named('AgNO3'), { water: litre, strength: perLitre(50) }, warm)).toMatchObject({
      refused: 'outside',
      quantity: 'temperature',
      found: 30,
      nearest: 20,
    });
  });
  test('a salt without a solubility table says so', () => {
    expect(mostStrength(named('Na3cit'), at20)).toEqual({ refused: 'noTable', table: 'solubility' });
  });
});

describe('a hydrate', () => {
  test('weighs more for the same solution', () => {
    const dry = mixed('CuSO4', { water: litre, massPercent: 6 });
    const blue = mixed('CuSO4.5H2O', { water: litre, massPercent: 6 });
    expect(blue.density).toBeCloseTo(dry.density, 6);
    expect(blue.strength / dry.strength).toBeGreaterThan(249.677 / 159.602);
  });
});

describe('a bath kept', () => {
  const salt = named('NaNO3');
  const bath = ok(mixVolume(salt, si<'volume'>(0.5e-3), perLitre(60), at20));

  test('is mixed to its volume', () => {
    expect(bath.volume).toBeCloseTo(0.5e-3, 9);
    expect(bath.salt * 1000).toBeCloseTo(29.4, 0);
  });
  test('gets back the water that left, and nothing else', () => {
    const change: JarChange = ok(topUp(salt, bath, si<'volume'>(0.4e-3), at20));
    expect(change.addSalt).toBe(0);
    expect(change.addWater * 1e6).toBeGreaterThan(98);
    expect(change.addWater * 1e6).toBeLessThan(102);
    expect(change.after.strength).toBe(bath.strength);
    expect(topUp(salt, bath, bath.volume, at20)).toEqual({ refused: 'alreadyThere' });
  });
  test('left to a crust it is refused, not guessed', () => {
    expect(topUp(salt, bath, si<'volume'>(0.02e-3), at20)).toMatchObject({ refused: 'outside' });
  });
  test('is strengthened by salt and thinned by water, and back again', () => {
    const strong = ok(strengthen(salt, bath, perLitre(100), at20));
    expect(strong.addSalt * 1000).toBeCloseTo((40 * bath.water) / 1e-3, 6);
    const thin = ok(dilute(salt, strong.after, perLitre(60), at20));
    expect(thin.after.strength).toBe(60);
    expect(thin.after.water / bath.water).toBeCloseTo(100 / 60, 9);
    expect(strengthen(salt, bath, perLitre(50), at20)).toEqual({ refused: 'alreadyThere' });
    expect(dilute(salt, bath, perLitre(70), at20)).toEqual({ refused: 'alreadyThere' });
    expect(strengthen(salt, bath, perLitre(2000), at20)).toMatchObject({ refused: 'outside' });
  });
});

describe('a jar of unknown strength, 100 mL of it weighed', () => {
  const volume = si<'volume'>(100e-6);
  const weighed = (mass: number, error = 0.1) => ({
    mass: grams(mass),
    volume,
    massError: grams(error),
    volumeError: si<'volume'>(0.5e-6),
  });
  test.each(['NaNO3', 'KNO3', 'NaCl', 'KCl', 'CuSO4.5H2O', 'Na2SO4', 'AgNO3', 'MgSO4.7H2O'])(
    '%s comes back',
    (id) => {
      const made = mixed(id, { water: litre, massPercent: 8 });
      const found = ok(strengthByWeight(named(id), weighed(made.density / 10), at20));
      expect(found.massPercent.value).toBeCloseTo(8, 6);
      expect(found.strength.value / made.strength).toBeCloseTo(1, 6);
      expect(found.massPercent.low).toBeLessThan(8);
      expect(found.massPercent.high).toBeGreaterThan(8);
    },
  );
  test('a better scale gives a narrower range', () => {
    const width = (error: number) => {
      const { massPercent } = ok(
        strengthByWeight(named('NaCl'), { ...weighed(104, error), volumeError: si<'volume'>(1e-8) }, at20),
      );
      return massPercent.high - massPercent.low;
    };
    expect(width(0.1)).toBeGreaterThan(5 * width(0.01));
  });
  test('water weighs as nothing dissolved, with a range up from it', () => {
    const found = ok(strengthByWeight(named('NaCl'), weighed(99.82), at20));
    expect(found.massPercent.value).toBeLessThan(0.01);
    expect(found.massPercent.high).toBeGreaterThan(0.5);
  });
  test.each([90, 160])('%d g are refused with the densities known', (mass) => {
    expect(strengthByWeight(named('NaCl'), weighed(mass), at20)).toMatchObject({
      refused: 'outside',
      quantity: 'density',
      unit: 'kg/m3',
    });
  });
});
