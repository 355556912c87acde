import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { allSalts, bathSalts } from '../../src/lib/core/facts/salts.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { shelfTables } from '../fixtures/shelf-tables.ts';
import { check, near } from './check.ts';

for (const id of ['NaNO3', 'KNO3', 'NaCl', 'CuSO4', 'Na2SO4'] as const) {
  for (const [celsius, grams] of saltTables[id].solubility91) {
    check('crcSolubility91', `row ${id}, ${celsius} °C: ${grams} g in 100 g water (0.05 %)`, () => {
      near(readTable(bathSalts[id].solubility, celsius), grams, 5e-4);
    });
  }
}

for (const [id, tables] of Object.entries(shelfTables)) {
  const points: readonly (readonly [number, number])[] = tables.solubility91;
  const table = allSalts[id as keyof typeof shelfTables].solubility;
  for (const [celsius, grams] of points) {
    check('crcSolubility91', `row ${id}, ${celsius} °C: ${grams} g in 100 g water`, () => {
      if (table === null) throw new Error('no table');
      near(readTable(table, celsius), grams, 1e-3);
    });
  }
}
