import { describe, expect, test } from 'vitest';
import { carryAway, neededAtMetal } from '../../../reference/oracles/carry-away.ts';
import { metals, refusedMetals } from '../../../../src/lib/core/facts/metals.ts';
import type { RefusedMetal } from '../../../../src/lib/core/facts/metals.ts';
import { passiveIn } from '../../../../src/lib/core/facts/pairing-facts.ts';
import { bathSalts, refusedSalts } from '../../../../src/lib/core/facts/salts.ts';
import type { BathSalt, RefusedSalt } from '../../../../src/lib/core/facts/salts.ts';
import { resistKinds } from '../../../../src/lib/core/facts/resists.ts';
import { refusalRules, warningRules } from '../../../../src/lib/core/rules/index.ts';
import {
  judgePairing,
  pairingBlocks,
  pairingCares,
  pairingMatrix,
  platesFor,
  saltsFor,
} from '../../../../src/lib/core/rules/judge-pairing.ts';
import type { Meeting } from '../../../../src/lib/core/rules/judge-pairing.ts';
import { waters } from '../../../../src/lib/core/job/choices.ts';
import { judgeSalt } from '../../../../src/lib/session/judge-salt.ts';
import { whyText } from '../../../../src/lib/words/en/pairings.ts';
import { planOf, pendant } from '../../../fixtures/jobs.ts';

const silver: Meeting = {
  metal: 'sterling-925',
  salt: 'NaNO3',
  plate: 'sterling-925',
  water: 'deionised',
  resist: 'nail-varnish',
};
const copper: Meeting = { ...silver, metal: 'C11000', plate: 'C11000', salt: 'NaCl' };
const bathSaltIds = Object.keys(bathSalts) as BathSalt[];
const refusedSaltIds = Object.keys(refusedSalts) as RefusedSalt[];

const verdict = (patch: Partial<Meeting>, base = silver) => judgePairing({ ...base, ...patch }).verdict;
const refusing = (patch: Partial<Meeting>, base = silver) =>
  judgePairing({ ...base, ...patch }).refusals.map(({ rule }) => rule);

/** Rules that ask how much, how warm, how large, how long, or about the supply: not what meets what. */
const notOfPairing = [
  'ten-volts',
  'unfit-supply',
  'bath-too-hot',
  'above-solubility',
  'outside-tables',
  'does-not-fit',
  'too-few-volts',
  'silver-bath-worn',
  'no-opening',
];

test('every refusing rule is about what meets what, or known not to be', () => {
  expect([...pairingBlocks, ...notOfPairing].toSorted()).toEqual(refusalRules.map(({ id }) => id).toSorted());
  const known = warningRules.map(({ id }) => id);
  expect(pairingCares.filter((id) => !known.includes(id))).toEqual([]);
});

describe('silver', () => {
  test.each(['NaNO3', 'KNO3'] as const)('in %s is good', (salt) => {
    expect(verdict({ salt })).toBe('good');
  });
  test.each(['NaCl', 'KCl', 'NH4Cl', 'FeCl3'] as const)('in %s is refused for its chloride', (salt) => {
    expect(refusing({ salt })).toContain('chloride-on-silver');
  });
  test.each(['Na2SO4', 'K2SO4', 'CuSO4.5H2O'] as const)('in %s films: with care', (salt) => {
    expect(verdict({ salt })).toBe('with care');
  });
  test.each(['C11000', 'C26000', 'C51000'])('opposite %s in nitrate is refused', (plate) => {
    expect(refusing({ plate: plate as Meeting['plate'] })).toContain('base-plate-with-silver');
  });
  test('opposite stainless steel asks for care, and tap water does', () => {
    expect(verdict({ plate: 'stainless' })).toBe('with care');
    expect(verdict({ water: 'tap' })).toBe('with care');
  });
});

describe('copper', () => {
  test('in table salt asks for an open window, in nitrate and sulfate for nothing', () => {
    expect(judgePairing(copper).cares.map(({ rule }) => rule)).toEqual(['chlorine-room-unknown']);
    for (const salt of ['NaNO3', 'KNO3', 'CuSO4.5H2O', 'Na2SO4', 'K2SO4'] as const)
      expect(verdict({ salt }, copper), salt).toBe('good');
  });
  test('does not mind tap water', () => {
    expect(verdict({ water: 'tap', salt: 'Na2SO4' }, copper)).toBe('good');
  });
  test('with the weakest resist asks for care', () => {
    expect(verdict({ salt: 'Na2SO4', resist: 'permanent-marker' }, copper)).toBe('with care');
  });
});

test.each(['C75200', 'mild-steel'] as const)('%s goes passive but in chloride', (metal) => {
  for (const salt of bathSaltIds) {
    const { anion } = bathSalts[salt];
    const refused = refusing({ metal, plate: metal, salt }).includes('passive-metal');
    expect(refused, salt).toBe(anion !== 'chloride');
  }
});

test.each(
  bathSaltIds.flatMap((salt) =>
    (Object.keys(refusedMetals) as RefusedMetal[]).map((metal) => [metal, salt] as const),
  ),
)('%s in %s is refused', (metal, salt) => {
  expect(verdict({ metal, plate: 'stainless', salt })).toBe('refuse');
});

test.each(refusedSaltIds)('%s is refused for every metal, plate, water and resist', (salt) => {
  for (const metal of Object.keys(metals) as (keyof typeof metals)[])
    for (const water of waters)
      for (const resist of resistKinds)
        expect(judgePairing({ metal, plate: metal, salt, water, resist }).verdict).toBe('refuse');
});

describe('solubility of the salt a bite makes', () => {
  test('the trade’s current asks for some mol/L at the metal', () => {
    expect(neededAtMetal()).toBeGreaterThan(0.5);
    expect(neededAtMetal()).toBeLessThan(3);
  });
  test.each([
    ['silver', 'nitrate', 'leaves'],
    ['silver', 'chloride', 'seals'],
    ['silver', 'sulfate', 'films'],
    ['copper', 'nitrate', 'leaves'],
    ['copper', 'sulfate', 'leaves'],
    ['brass', 'sulfate', 'leaves'],
  ] as const)('%s in %s %s', (family, anion, verdictThere) => {
    expect(carryAway(family, anion)?.verdict).toBe(verdictThere);
  });
  test('agrees with every judgement: what seals is refused, what films asks for care', () => {
    for (const { metal, salt, judgement } of pairingMatrix()) {
      if (!(metal in metals) || !(salt in bathSalts)) continue;
      const { family } = metals[metal as keyof typeof metals];
      const { anion } = bathSalts[salt as keyof typeof bathSalts];
      const carried = carryAway(family, anion)?.verdict;
      if (carried === 'seals') expect(judgement.verdict, `${metal} ${salt}`).toBe('refuse');
      if (carried === 'films' && !passiveIn[family]?.[anion])
        expect(judgement.verdict, `${metal} ${salt}`).not.toBe('good');
    }
  });
});

describe('the whole table', () => {
  const cells = pairingMatrix();
  test('has a cell for every metal and salt', () => {
    const metalCount = Object.keys(metals).length + Object.keys(refusedMetals).length;
    expect(cells).toHaveLength(metalCount * 21);
  });
  test('says why in a sentence, and gives a rule with each refusal', () => {
    for (const { judgement } of cells) {
      expect(whyText(judgement.why)).toMatch(/^[A-Z].*\.$/);
      expect(judgement.refusals.length > 0).toBe(judgement.verdict === 'refuse');
    }
  });
  test('every metal that can be bitten has a salt that bites it', () => {
    for (const metal of Object.keys(metals) as (keyof typeof metals)[])
      expect(
        cells.some((cell) => cell.metal === metal && cell.judgement.verdict !== 'refuse'),
        metal,
      ).toBe(true);
  });
});

test('what instead: the best first, and nothing for gold', () => {
  expect(saltsFor({ ...silver, salt: 'NaCl' }).map(({ id }) => id)).toEqual([
    'NaNO3',
    'KNO3',
    'CuSO4',
    'Na2SO4',
    'K2SO4',
  ]);
  expect(platesFor(silver).map(({ id }) => id)).toEqual(['sterling-925', 'stainless']);
  expect(saltsFor({ ...silver, metal: 'gold' })).toEqual([]);
});

test('the salt question of a job is answered by the same judge', () => {
  const plan = planOf(pendant());
  for (const salt of [...bathSaltIds, ...refusedSaltIds]) {
    const judged = judgeSalt(plan, salt);
    expect(judged.verdict === 'refuse', salt).toBe(verdict({ salt }) === 'refuse');
  }
});
