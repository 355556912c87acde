import { describe, expect, test } from 'vitest';
import { bathIngredients, classifyMixture } from './mixture.ts';
import { findSalt } from '../../../src/lib/core/facts/salts.ts';
import type { ShelfSalt } from '../../../src/lib/core/facts/salts.ts';
import type { SubstanceId } from '../../../src/lib/core/facts/substances.ts';

const of = (substance: SubstanceId, massPercent: number) =>
  classifyMixture([{ substance, massPercent }]).hazards;

describe('a mixture is classified by concentration', () => {
  // limits of the Annex VI entries and of CLP Annex I
  test.each<[SubstanceId, number, string[]]>([
    ['sodium-hydroxide', 2, ['H314']],
    ['sodium-hydroxide', 1.9, ['H319', 'H315']],
    ['sodium-hydroxide', 0.5, ['H319', 'H315']],
    ['sodium-hydroxide', 0.49, []],
    ['copper-sulfate', 3, ['H318', 'H411', 'H400']],
    ['copper-sulfate', 2.9, ['H411', 'H400', 'H319']],
    ['copper-sulfate', 2.4, ['H412', 'H319']],
    ['copper-sulfate', 0.3, ['H412']],
    ['copper-sulfate', 0.2, []],
    ['sodium-nitrate', 9.9, []],
    ['sodium-nitrate', 10, ['H319']],
    ['sodium-chloride', 25, []],
    ['silver-nitrate', 0.02, ['H412']],
    ['nickel-sulfate', 0.009, []],
    ['nickel-sulfate', 0.01, ['H317']],
    ['nickel-sulfate', 0.1, ['H350i', 'H317', 'H373']],
    ['nickel-sulfate', 1, ['H350i', 'H360D', 'H334', 'H372', 'H317', 'H341', 'H412']],
    ['lead-compounds', 0.3, ['H360Df', 'H412']],
    ['lead-compounds', 0.5, ['H360Df', 'H373', 'H412']],
  ])('%s at %d %%: %j', (substance, massPercent, hazards) => {
    expect(of(substance, massPercent)).toEqual(hazards);
  });
  test('toxicity by mouth adds up over the ingredients', () => {
    // 481 mg/kg at 30 % alone is 1603; with 20 % of 500 more it is 976: harmful either way, 5 % is not
    expect(of('copper-sulfate', 30)).toContain('H302');
    expect(of('copper-sulfate', 20)).not.toContain('H302');
    expect(
      classifyMixture([
        { substance: 'copper-sulfate', massPercent: 20 },
        { substance: 'ammonium-chloride', massPercent: 10 },
      ]).hazards,
    ).toContain('H302');
  });
  test('hypochlorite warns of acid from 5 %', () => {
    expect(classifyMixture([{ substance: 'sodium-hypochlorite', massPercent: 5 }]).extra).toEqual(['EUH031']);
    expect(classifyMixture([{ substance: 'sodium-hypochlorite', massPercent: 4 }]).extra).toEqual([]);
  });
  test('a solution never carries more statements than its ingredients', () => {
    expect(of('potassium-nitrate', 20)).not.toContain('H272');
  });
});

describe('a used bath', () => {
  const salt = findSalt('NaNO3') as ShelfSalt;
  test('is its salt and each metal as the salt it makes', () => {
    const parts = bathIngredients(salt, 5.66, { Ag: 8, Cu: 0.7 }, 1035);
    expect(parts.map(({ substance }) => substance)).toEqual([
      'sodium-nitrate',
      'silver-nitrate',
      'copper-sulfate',
    ]);
    // 8 g/L silver is 12.6 g/L silver nitrate, 1.2 % of 1035 g/L
    expect(parts[1]?.massPercent).toBeCloseTo(1.217, 3);
    expect(classifyMixture(parts)).toMatchObject({ signal: 'Warning', pictograms: ['GHS07', 'GHS09'] });
  });
  test('from nickel silver sensitises long before it does anything else', () => {
    const brine = findSalt('NaCl') as ShelfSalt;
    const { hazards } = classifyMixture(bathIngredients(brine, 5, { Ni: 0.05 }, 1034));
    expect(hazards).toEqual(['H317']);
  });
});
