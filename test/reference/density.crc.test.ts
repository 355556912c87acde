import { expect } from 'vitest';
import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { densityOf, isRefused } from '../../src/lib/core/chemistry/solutions.ts';
import { solutionDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import { allSalts, bathSalts } from '../../src/lib/core/facts/salts.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { bathMolarity, shelfTables } from '../fixtures/shelf-tables.ts';
import { check } from './check.ts';

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

for (const [id, { density, molarity }] of Object.entries(shelfTables)) {
  const points: readonly (readonly [number, number])[] = density;
  const { density: table } = allSalts[id as keyof typeof shelfTables];
  // two salts are not in the handbook: their densities are worked out, and compared with nothing here
  if (points.length > 0) {
    check('crcDensity', `row ${id}: the handbook's points and no others but water`, () => {
      expect(table.x).toEqual([0, ...points.map(([x]) => x)]);
      expect(table.y.slice(1)).toEqual(points.map(([, y]) => y));
    });
  }
  molarityChecks(id, molarity);
}
for (const [id, molarity] of Object.entries(bathMolarity)) molarityChecks(id, molarity);

/** Every molarity printed beside the densities, from mass % and water; printed to a thousandth. */
function molarityChecks(id: string, points: readonly (readonly [number, number])[]): void {
  const salt = { facts: allSalts[id as keyof typeof allSalts], hydrate: null };
  for (const [massPercent, printed] of points) {
    check('crcDensity', `row ${id}, ${massPercent} %: ${printed} mol/L (0.1 %)`, () => {
      const answer = densityOf(salt, massPercent, si<'temperature'>(293.15));
      if (isRefused(answer)) throw new Error(JSON.stringify(answer));
      const molarity = (massPercent * answer.density) / 100 / salt.facts.molarMass.value;
      expect(Math.abs(molarity - printed)).toBeLessThanOrEqual(0.001 * printed + 0.0006);
    });
  }
}
