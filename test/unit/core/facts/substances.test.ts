import { describe, expect, test } from 'vitest';
import { airLimits, strictest } from '../../../../src/lib/core/facts/air-limits.ts';
import { allSalts } from '../../../../src/lib/core/facts/salts.ts';
import {
  hazardStatements,
  labelOf,
  substanceOfSalt,
  substances,
} from '../../../../src/lib/core/facts/substances.ts';
import type { HazardCode, Substance, SubstanceId } from '../../../../src/lib/core/facts/substances.ts';
import { pictogramsOf, statementsFor } from '../../../../src/lib/core/facts/substances/pictograms.ts';
import { gravity } from '../../../../src/lib/core/facts/substances/statements.ts';
import { worn } from '../../../../src/lib/core/facts/wear.ts';
import type { Worn } from '../../../../src/lib/core/facts/wear.ts';
import {
  aidTexts,
  airTexts,
  groupNames,
  handTexts,
  pictogramWords,
  thingNames,
} from '../../../../src/lib/words/en/wear.ts';
import { annexVI } from '../../../fixtures/clp-annex-vi.ts';

const all = Object.entries(substances) as [SubstanceId, Substance][];

describe('substances', () => {
  test('that the law classifies are all held against it', () => {
    const harmonised = all.filter(([, { basis }]) => basis === 'harmonised').map(([id]) => id);
    expect(harmonised.toSorted()).toEqual(Object.keys(annexVI).toSorted());
    expect(harmonised.length).toBeGreaterThanOrEqual(30);
  });
  test('that nothing classifies carry no sign, and the others at least one statement', () => {
    for (const [id, { basis, hazards, signal }] of all) {
      expect(hazards.length === 0, id).toBe(basis === 'notClassified');
      expect(signal === null, id).toBe(basis === 'notClassified');
    }
  });
  test('show each pictogram for a statement, and each statement that calls for one by a pictogram', () => {
    for (const [id, { hazards }] of all) {
      const signs = labelOf(id).pictograms;
      for (const sign of signs)
        expect(
          statementsFor(sign).some((code) => hazards.includes(code)),
          `${id} ${sign}`,
        ).toBe(true);
      for (const code of hazards) {
        const [sign] = pictogramsOf([code]);
        // a sign gives way only to a stronger one
        const stronger = sign === 'GHS07' && signs.some((one) => ['GHS05', 'GHS06', 'GHS08'].includes(one));
        expect(sign === undefined || signs.includes(sign) || stronger, `${id} ${code}`).toBe(true);
      }
    }
  });
  test('have every statement ranked', () => {
    expect([...gravity].toSorted()).toEqual((Object.keys(hazardStatements) as HazardCode[]).toSorted());
  });
  test('stand for every salt', () => {
    expect(Object.keys(substanceOfSalt).toSorted()).toEqual(Object.keys(allSalts).toSorted());
  });
});

describe('precedence of pictograms (CLP Article 26)', () => {
  test.each<[HazardCode[], string[]]>([
    [['H301', 'H302'], ['GHS06']],
    [['H314', 'H315', 'H319'], ['GHS05']],
    [
      ['H318', 'H302'],
      ['GHS05', 'GHS07'],
    ],
    [['H334', 'H317', 'H315'], ['GHS08']],
    [['H317'], ['GHS07']],
    [
      ['H290', 'H319'],
      ['GHS05', 'GHS07'],
    ],
    [['H412'], []],
  ])('%j shows %j', (codes, signs) => {
    expect(pictogramsOf(codes)).toEqual(signs);
  });
});

describe('what to wear', () => {
  const things = Object.entries(worn) as [string, Worn][];
  test('is there for every salt, and has all its words', () => {
    const labels = things.map(([, { label }]) => label);
    for (const id of Object.values(substanceOfSalt))
      expect(
        labels.some(({ hazards }) => substances[id].hazards.every((code) => hazards.includes(code))),
        id,
      ).toBe(true);
    for (const [id, { group, air, aid, label }] of things) {
      expect(thingNames[id as keyof typeof worn], id).not.toBe('');
      expect(groupNames[group] && handTexts[group] && airTexts[air] && aidTexts[aid].length > 0).toBeTruthy();
      expect(
        label.pictograms.every((sign) => sign in pictogramWords),
        id,
      ).toBe(true);
    }
  });
  test('never lets a PVA glove near water, nor thin nitrile near acetone', () => {
    for (const [id, { group, gloves }] of things) {
      const pva = gloves.find(({ material }) => material === 'pva');
      if (group === 'salt' || group === 'bath' || group === 'product') expect(pva?.verdict, id).toBe('never');
    }
    for (const id of ['acetone', 'ethyl-acetate'] as const)
      expect(worn[id].gloves.find(({ material }) => material === 'nitrile-thin')?.verdict).toBe('never');
  });
  test('asks for goggles wherever eyes can be damaged', () => {
    for (const [id, { label, eyes }] of things)
      if (label.hazards.includes('H318') || label.hazards.includes('H314'))
        expect(eyes, id).toMatch(/^goggles/);
  });
});

describe('limits in air', () => {
  test('of chlorine: half a part in a million for a quarter of an hour is not the strictest', () => {
    expect(strictest('chlorine', 'short')?.value).toBe(0.4);
    expect(strictest('chlorine', 'danger')?.value).toBe(10);
    expect(strictest('hydrogen', 'short')).toBeNull();
  });
  test('chlorine is smelt below every limit of the table', () => {
    const odour = strictest('chlorine', 'odour')?.value ?? NaN;
    for (const { substance, kind, value } of airLimits)
      if (substance === 'chlorine' && kind !== 'odour') expect(value).toBeGreaterThan(odour);
  });
});
