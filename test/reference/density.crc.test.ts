import { expect } from 'vitest';
import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { dissolve } from '../../src/lib/core/chemistry/solution.ts';
import { solutionDensity, waterDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import { bathSalts } from '../../src/lib/core/facts/salts.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { check, near } from './check.ts';

const ids = ['NaNO3', 'KNO3', 'NaCl', 'CuSO4', 'Na2SO4'] as const;

for (const id of ids) {
  const { density, apparentDensity } = bathSalts[id];
  const points = saltTables[id].density;

  check('crcDensity', `row ${id}: no other points than the handbook's and water`, () => {
    expect(density.x).toEqual([0, ...points.map(([x]) => x)]);
  });
  check('crcDensity', `row ${id}: the model for other temperatures stays within 0.002 g/cm³ of it`, () => {
    const off = points.map(([x, y]) => Math.abs(solutionDensity(apparentDensity.c, x / 100, 20) / 1e3 - y));
    expect(Math.max(...off)).toBeLessThanOrEqual(0.002);
  });
  for (const [massPercent, grams] of points) {
    check('crcDensity', `row ${id}, ${massPercent} %: ${grams} g/cm³, exact`, () => {
      expect(readTable(density, massPercent)).toBe(grams);
    });
  }
}

/** Molarities of the same table, mol/L. */
const molarities = [
  ['NaNO3', 10, 1.256],
  ['KNO3', 10, 1.051],
  ['NaCl', 10, 1.832],
  ['CuSO4', 10, 0.694],
  ['Na2SO4', 10, 0.768],
] as const;

for (const [id, massPercent, molarity] of molarities) {
  check('crcDensity', `row ${id}, ${massPercent} %: ${molarity} mol/L (0.1 %)`, () => {
    const strength = (massPercent / (100 - massPercent)) * waterDensity(20);
    const salt = { facts: bathSalts[id], hydrate: null };
    near(
      dissolve(salt, si<'massConcentration'>(strength), si<'temperature'>(293.15)).molarity,
      molarity,
      1e-3,
    );
  });
}
