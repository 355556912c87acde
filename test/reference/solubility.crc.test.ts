import { expect } from 'vitest';
import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { solubility } from '../../src/lib/core/chemistry/solution.ts';
import { waterDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import { allSalts, bathSalts } from '../../src/lib/core/facts/salts.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { shelfTables } from '../fixtures/shelf-tables.ts';
import { check, near } from './check.ts';

const ids = ['NaNO3', 'KNO3', 'NaCl', 'CuSO4', 'Na2SO4'] as const;

for (const id of ids) {
  for (const [celsius, grams] of saltTables[id].solubility) {
    check('crcSolubility', `row ${id}, ${celsius} °C: ${grams} g in 100 g water, exact`, () => {
      expect(readTable(bathSalts[id].solubility, celsius)).toBe(grams);
    });
    check('crcSolubility', `row ${id}, ${celsius} °C, as g per litre of water`, () => {
      const most = solubility({ facts: bathSalts[id], hydrate: null }, si<'temperature'>(celsius + 273.15));
      near(most, (grams / 100) * waterDensity(celsius), 1e-9);
    });
  }
}

/** g of the crystals in 100 g of added water, by x = s/(f − s·(1 − f)/100) from the same rows. */
const hydrates = [
  ['CuSO4', 'CuSO4.5H2O', 0, 24.1],
  ['CuSO4', 'CuSO4.5H2O', 20, 35.4],
  ['CuSO4', 'CuSO4.5H2O', 25, 39.2],
  ['CuSO4', 'CuSO4.5H2O', 40, 53.2],
  ['Na2SO4', 'Na2SO4.10H2O', 20, 57.7],
  ['Na2SO4', 'Na2SO4.10H2O', 25, 99.1],
  ['Na2SO4', 'Na2SO4.10H2O', 30, 196.5],
] as const;

for (const [id, form, celsius, grams] of hydrates) {
  check(
    'crcSolubility',
    `row ${id}, ${celsius} °C, as ${form}: ${grams} g in 100 g added water (0.3 %)`,
    () => {
      const [hydrate] = bathSalts[id].hydrates;
      expect(hydrate.id).toBe(form);
      const most = solubility({ facts: bathSalts[id], hydrate }, si<'temperature'>(celsius + 273.15));
      near((100 * most) / waterDensity(celsius), grams, 3e-3);
    },
  );
}

for (const [id, tables] of Object.entries(shelfTables)) {
  // citric acid is not in this handbook's table
  if (id === 'citric') continue;
  const points: readonly (readonly [number, number])[] = tables.solubility;
  const table = allSalts[id as keyof typeof shelfTables].solubility;
  for (const [celsius, grams] of points) {
    check('crcSolubility', `row ${id}, ${celsius} °C: ${grams} g in 100 g water`, () => {
      if (table === null) throw new Error('no table');
      expect(readTable(table, celsius)).toBe(grams);
    });
  }
}
