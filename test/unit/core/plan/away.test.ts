import { describe, expect, test } from 'vitest';
import { cuff, figureOf, pendant, planOf } from '../../../fixtures/jobs.ts';
import { awayFor } from '../../../../src/lib/core/plan/away.ts';
import type { NeverTreat, StandingBath } from '../../../../src/lib/core/plan/away.ts';

const silver: StandingBath = {
  salt: 'NaNO3',
  group: 'silver',
  strength: 60,
  volumeMl: 500,
  heldMg: { Ag: 4000, Cu: 320 },
  perLitre: 2,
};
const copper: StandingBath = { ...silver, salt: 'NaCl', group: 'copper and brass', heldMg: { Cu: 2371 } };
const brass: StandingBath = { ...copper, heldMg: { Cu: 1400, Zn: 600 } };
const allowed = { use: 'home', mayTreat: true } as const;
const asked = { use: 'home', mayTreat: false } as const;

describe('what a bath holds', () => {
  test('in mg/L, the most first, with the line for scale where the law has one', () => {
    const { held } = awayFor(silver, asked);
    expect(held.map(({ element, mgPerLitre }) => [element, mgPerLitre])).toEqual([
      ['Ag', 8000],
      ['Cu', 640],
    ]);
    expect(held[0]?.line?.limit.value).toBe(5);
    expect(held[1]?.line).toBeNull();
  });
  test('counts the metal of a metal salt', () => {
    const { held } = awayFor({ ...copper, salt: 'CuSO4.5H2O', strength: 100, heldMg: {} }, asked);
    // 63.546/249.685 of 100 g/L
    expect(held[0]?.mgPerLitre).toBeCloseTo(25_450, -2);
  });
});

describe('no dose', () => {
  test('before the authority’s word is recorded', () => {
    for (const bath of [silver, copper, brass]) {
      expect(awayFor(bath, asked).dose).toBeNull();
      expect(awayFor(bath, allowed).dose).not.toBeNull();
    }
  });
  const never: readonly (readonly [NeverTreat, StandingBath])[] = [
    ['nickel', { ...copper, group: 'nickel' }],
    ['nickel', { ...copper, heldMg: { Cu: 100, Ni: 50 } }],
    ['ammonium', { ...copper, salt: 'NH4Cl' }],
    ['citrate', { ...copper, salt: 'Na3cit' }],
    ['chromium', { ...copper, heldMg: { Cu: 100, Cr: 0.1 } }],
    ['lead', { ...brass, heldMg: { Cu: 1400, Zn: 600, Pb: 60 } }],
    ['metal-salt', { ...copper, salt: 'CuSO4.5H2O' }],
    ['silver-in-chloride', { ...silver, salt: 'NaCl' }],
    ['mixed', { ...copper, salt: 'NaNO3', heldMg: { Cu: 100, Ag: 50 } }],
    ['unknown', { ...copper, group: 'unknown' }],
    ['unknown', { ...copper, salt: 'no such salt' }],
  ];
  test.each(never)('ever: %s', (reason, bath) => {
    const away = awayFor(bath, allowed);
    expect(away.neverTreat).toContain(reason);
    expect(away.dose).toBeNull();
  });
  test('for a bath that holds nothing', () => {
    expect(awayFor({ ...silver, heldMg: {} }, allowed).dose).toBeNull();
  });
});

describe('a dose', () => {
  test('of table salt for silver has its upper limit and no pH', () => {
    const { dose } = awayFor(silver, allowed);
    expect(dose?.reagent).toBe('NaCl');
    expect(dose?.grams).toBeCloseTo(2.459, 2);
    expect(dose?.most).toBeGreaterThan(dose?.grams ?? Infinity);
    expect(dose?.window).toBeNull();
  });
  test('of soda ash for copper and brass names the pH at which to stop', () => {
    expect(awayFor(copper, allowed).dose?.window?.uncertainty).toEqual({ kind: 'band', low: 8.5, high: 9.5 });
    expect(awayFor(brass, allowed).dose?.window?.uncertainty).toEqual({ kind: 'band', low: 9, high: 9.6 });
  });
});

describe('age', () => {
  test('a silver nitrate bath is retired sooner, and is smelt at before it is closed', () => {
    const old = awayFor({ ...silver, perLitre: 5 }, asked);
    expect(old.worn.isWorn).toBe(true);
    expect(old.asksForAmmonia).toBe(true);
    const salt = awayFor({ ...copper, perLitre: 5 }, asked);
    expect(salt.worn.isWorn).toBe(false);
    expect(salt.asksForAmmonia).toBe(false);
  });
});

test('codes follow the use: household, or business', () => {
  expect(awayFor(silver, asked).codes.every(({ code }) => code.startsWith('20 01'))).toBe(true);
  const business = awayFor(silver, { use: 'selling', mayTreat: false }).codes.map(({ code }) => code);
  expect(business).toContain('11 01 98*');
  expect(business.some((code) => code.startsWith('20'))).toBe(false);
});

describe('in a plan', () => {
  const allows = { 'place.authorityAllowsTreatment': true };
  test('a dose stands only where the authority allows it, and is that of the whole bath', () => {
    expect(Object.keys(planOf(pendant()).figures).filter((id) => /treatment|sludge/.test(id))).toEqual([]);
    const plan = planOf(pendant(), allows);
    const [mgPerLitre, mL] = [
      figureOf(plan, 'dissolved_metal.Ag').value,
      figureOf(plan, 'bath_volume').value,
    ];
    const silverG = (mgPerLitre * mL) / 1e6;
    // 0.5418 g for each gram, and 10 mmol/L
    expect(figureOf(plan, 'treatment_dose.NaCl').value).toBeCloseTo(
      silverG * 0.5418 + (0.58443 * mL) / 1e3,
      3,
    );
    expect(figureOf(plan, 'sludge_mass').value).toBeCloseTo(silverG * 1.3287, 3);
  });
  test('and never for nickel', () => {
    const plan = planOf(cuff(), { ...allows, 'piece.metal': 'C75200', 'cathode.metal': 'C75200' });
    expect(figureOf(plan, 'charge').value).toBeGreaterThan(0);
    expect(Object.keys(plan.figures).filter((id) => /treatment|sludge/.test(id))).toEqual([]);
  });
});
