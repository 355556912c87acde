import { describe, expect, test } from 'vitest';
import { lawFor, lawLines, placesOf } from '../../../src/lib/core/facts/law.ts';
import { cadmium, hallmarkFrom, lead, nickelRelease } from '../../../src/lib/core/facts/selling.ts';
import { metals } from '../../../src/lib/core/facts/metals.ts';
import { checkYourCountry, lawIds, lawShown, lawTexts } from '../../../src/lib/words/en/law.ts';

describe('every line of law', () => {
  test('has its own id and its text, and no text is left over', () => {
    expect(new Set(lawIds).size).toBe(lawIds.length);
    expect(Object.keys(lawTexts).toSorted()).toEqual([...lawIds].toSorted());
  });
  test('is shown with a date and the word to check', () => {
    expect(checkYourCountry).toMatch(/\d{4}-\d{2}\..*check your country/);
  });
});

describe('an unknown country', () => {
  test('means every line, the strictest reading', () => {
    for (const topic of ['buying', 'selling', 'teaching', 'waste'] as const)
      expect(lawFor(topic, null)).toEqual(lawLines.filter((one) => one.topic === topic));
  });
  test('puts what is closed first', () => {
    expect(lawShown('buying', null)[0]?.effect).toBe('closed');
  });
});

describe('a known country', () => {
  test('has the lines of its place and those that hold everywhere', () => {
    expect(placesOf('FR')).toEqual(['EU', 'any']);
    expect(placesOf('DK')).toEqual(['EU', 'DK', 'any']);
    expect(placesOf('GB')).toEqual(['GB', 'any']);
    expect(placesOf('NZ')).toEqual(['any']);
  });
  test('Denmark closes what its neighbours only watch', () => {
    const effects = (country: string) => lawFor('buying', country, 'NaNO3').map(({ effect }) => effect);
    expect(effects('DK')).toEqual(['reported', 'closed']);
    expect(effects('SE')).toEqual(['reported']);
  });
});

describe('the words agree with the numbers', () => {
  test.each([
    ['eu-lead', lead.value],
    ['eu-cadmium', cadmium.value],
    ['eu-nickel', nickelRelease.skin.value],
    ['eu-nickel', nickelRelease.post.value],
    ['gb-hallmark', hallmarkFrom.silver.value],
    ['gb-hallmark', hallmarkFrom.gold.value],
  ] as const)('%s: %d', (id, value) => {
    expect(lawTexts[id]).toContain(String(value));
  });
  test('leaded brass holds fifty times the limit', () => {
    expect(metals.C36000.composition.massPercent.Pb / lead.value).toBeGreaterThan(50);
  });
});
