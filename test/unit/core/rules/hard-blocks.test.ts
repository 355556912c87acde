import { describe, expect, test } from 'vitest';
import { refusedMetals } from '../../../../src/lib/core/facts/metals.ts';
import { refusedSalts } from '../../../../src/lib/core/facts/salts.ts';
import { supplyKinds } from '../../../../src/lib/core/facts/supplies.ts';
import {
  amount,
  cuff,
  figureOf,
  pendant,
  planOf,
  refusedBy,
  tokens,
  warnedBy,
} from '../../../fixtures/jobs.ts';

const silverNames = ['sterling', 'fine-silver', 'sterling-925', 'silver-935-lowtarnish', 'coin-900'];

describe('chloride never meets silver:', () => {
  test.each(silverNames.flatMap((metal) => ['NaCl', 'KCl', 'NH4Cl', 'FeCl3'].map((salt) => [metal, salt])))(
    '%s in %s',
    (metal, salt) => {
      const plan = planOf(pendant(), { 'piece.metal': metal, 'bath.salt': salt });
      expect(refusedBy(plan)).toContain('chloride-on-silver');
    },
  );
});

describe('ammonium never meets silver:', () => {
  test.each(silverNames.flatMap((metal) => ['(NH4)2SO4', 'NH4Cl', 'NH4NO3'].map((salt) => [metal, salt])))(
    '%s in %s',
    (metal, salt) => {
      const plan = planOf(pendant(), { 'piece.metal': metal, 'bath.salt': salt });
      expect(refusedBy(plan)).toContain('silver-with-ammonium');
    },
  );
});

test.each(['sterling', 'copper', 'brass'])('ammonium nitrate is refused outright, for %s too', (metal) => {
  const plan = planOf(cuff(), { 'piece.metal': metal, 'bath.salt': 'NH4NO3' });
  expect(refusedBy(plan)).toContain('ammonium-nitrate');
});

describe('chromium never hangs on +:', () => {
  test.each([
    '304',
    '316',
    'stainless',
    'stainless-steel',
    'stainless-304',
    'chrome',
    'chrome-plated',
    'nichrome',
    'Al-6061',
  ])('%s', (metal) => {
    expect(refusedBy(planOf(cuff(), { 'piece.metal': metal }))).toContain('chromium-anode');
  });
});

describe('copper and brass never face silver in nitrate:', () => {
  test.each(['copper', 'brass', 'C11000', 'C26000'])('a %s plate', (plate) => {
    for (const salt of ['NaNO3', 'KNO3']) {
      const plan = planOf(pendant(), { 'cathode.metal': plate, 'bath.salt': salt });
      expect(refusedBy(plan)).toContain('base-plate-with-silver');
    }
  });
  test('a silver plate may', () => {
    expect(refusedBy(planOf(pendant(), { 'cathode.metal': 'fine-silver' }))).toEqual([]);
  });
});

describe('ten volts and over:', () => {
  test.each([10, 10.01, 12, 24, 230, 1000])('%d V are refused', (volts) => {
    expect(refusedBy(planOf(pendant(), { 'supply.volts': amount(volts, 'V') }))).toContain('ten-volts');
    expect(refusedBy(planOf(tokens(), { 'supply.maxVolts': amount(volts, 'V') }))).toContain('ten-volts');
  });
  test('exactly 10 V in millivolts is refused as well', () => {
    expect(refusedBy(planOf(pendant(), { 'supply.volts': amount(10_000, 'mV') }))).toContain('ten-volts');
  });
  test('9.99 V are planned with 9.5 V and a word about it', () => {
    for (const plan of [
      planOf(pendant(), { 'supply.volts': amount(9.99, 'V'), 'supply.maxAmps': undefined }),
      planOf(tokens(), { 'supply.maxVolts': amount(9.99, 'V'), 'supply.amps': amount(100, 'A') }),
    ]) {
      expect(refusedBy(plan)).toEqual([]);
      expect(warnedBy(plan)).toContain('volts-capped');
      expect(figureOf(plan, 'volts').value).toBe(9.5);
    }
  });
});

describe('supplies:', () => {
  test.each(Object.entries(supplyKinds))('%s is %s', (kind, fitness) => {
    const refused = refusedBy(planOf(pendant(), { 'supply.kind': kind }));
    expect(refused.includes('unfit-supply')).toBe(fitness !== 'fit');
  });
});

describe('stock:', () => {
  test.each([
    'gold',
    'gold-filled',
    'gold-plated',
    'silver-plated',
    'plated',
    'galvanised',
    'galvanized',
    'zinc',
    'unknown',
    'unknown-yellow',
    'cadmium-solder',
  ])('%s is not etched', (metal) => {
    expect(refusedBy(planOf(cuff(), { 'piece.metal': metal }))).toContain('unsuitable-stock');
  });
  test.each(Object.keys(refusedMetals))('%s never gets a plan', (metal) => {
    expect(refusedBy(planOf(cuff(), { 'piece.metal': metal })).length).toBeGreaterThan(0);
  });
});

test.each(Object.keys(refusedSalts))('%s never makes a bath, on any metal', (salt) => {
  for (const metal of ['sterling', 'copper', 'brass']) {
    expect(refusedBy(planOf(cuff(), { 'piece.metal': metal, 'bath.salt': salt })).length).toBeGreaterThan(0);
  }
});

describe('more salt than dissolves:', () => {
  // g in a litre of water at 20 °C, from the handbook table
  test.each([
    ['NaNO3', 873],
    ['KNO3', 320],
    ['NaCl', 359],
    ['CuSO4', 201],
    ['CuSO4.5H2O', 355],
    ['Na2SO4', 193],
    ['Na2SO4.10H2O', 578],
  ])('%s at %d g/L', (salt, strength) => {
    const metal = 'copper';
    const plan = planOf(cuff(), {
      'piece.metal': metal,
      'bath.salt': salt,
      'bath.strength': amount(strength, 'g/L'),
      'bath.temperature': amount(20, 'degC'),
    });
    expect(refusedBy(plan)).toContain('above-solubility');
  });
  test('cold water takes up less', () => {
    const at = (celsius: number) =>
      refusedBy(
        planOf(pendant(), {
          'bath.salt': 'KNO3',
          'bath.strength': amount(250, 'g/L'),
          'bath.temperature': amount(celsius, 'degC'),
        }),
      );
    expect(at(20)).not.toContain('above-solubility');
    expect(at(10)).toContain('above-solubility');
  });
});

describe('depth over half the sheet', () => {
  const thin = { 'piece.thickness': amount(0.2, 'mm') };
  test('is a word, not a refusal', () => {
    const plan = planOf(pendant(), thin);
    expect(refusedBy(plan)).toEqual([]);
    expect(warnedBy(plan)).toContain('depth-over-half');
  });
  test('is silent when the maker means to go through', () => {
    expect(warnedBy(planOf(pendant(), { ...thin, 'piece.through': true }))).not.toContain('depth-over-half');
  });
  test('counts both faces', () => {
    const sheet = { 'piece.thickness': amount(0.35, 'mm') };
    expect(warnedBy(planOf(pendant(), sheet))).not.toContain('depth-over-half');
    expect(warnedBy(planOf(pendant(), { ...sheet, 'piece.faces': 'both' }))).toContain('depth-over-half');
  });
});
