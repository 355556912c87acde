import { expect } from 'vitest';
import { readTable } from '../../src/lib/core/chemistry/curve.ts';
import { dissolve } from '../../src/lib/core/chemistry/solution.ts';
import { waterDensity } from '../../src/lib/core/chemistry/water-density.laliberte2009.ts';
import type { Table } from '../../src/lib/core/facts/datum.ts';
import { allSalts, bathSalts } from '../../src/lib/core/facts/salts.ts';
import { si } from '../../src/lib/core/units/quantity.ts';
import { saltTables } from '../fixtures/salt-tables.ts';
import { shelfTables } from '../fixtures/shelf-tables.ts';
import { check, near } from './check.ts';

const ids = ['NaNO3', 'KNO3', 'NaCl', 'CuSO4', 'Na2SO4'] as const;

/** The table without its point k. */
const without = (table: Table, k: number): Table => ({
  ...table,
  x: table.x.filter((_, i) => i !== k),
  y: table.y.filter((_, i) => i !== k),
});

for (const id of ids) {
  const table: Table = bathSalts[id].conductivity;
  const points = saltTables[id].conductivity;

  check('crcConductivity', `row ${id}: no other points than the handbook's`, () => {
    expect(table.x).toEqual(points.map(([x]) => x));
  });

  points.forEach(([massPercent, millisiemens], k) => {
    check('crcConductivity', `row ${id}, ${massPercent} %: ${millisiemens} mS/cm, exact`, () => {
      expect(readTable(table, massPercent, 'log')).toBe(millisiemens);
    });
    if (k === 0 || k === points.length - 1) return;
    check('crcConductivity', `row ${id}, ${massPercent} % from its neighbours (3 %)`, () => {
      near(readTable(without(table, k), massPercent, 'log'), millisiemens, 3e-2);
    });
  });
}

for (const [id, { neighbours, conductivity }] of Object.entries(shelfTables)) {
  const points: readonly (readonly [number, number])[] = conductivity;
  const table: Table | null = allSalts[id as keyof typeof shelfTables].conductivity;
  check('crcConductivity', `row ${id}: the handbook's points and no others`, () => {
    expect(table?.x ?? []).toEqual(points.map(([x]) => x));
    expect(table?.y ?? []).toEqual(points.map(([, y]) => y));
  });
  if (table === null) continue;
  points.forEach(([massPercent, millisiemens], k) => {
    if (k === 0 || k === points.length - 1) return;
    const band = Number((100 * neighbours).toPrecision(2));
    check('crcConductivity', `row ${id}, ${massPercent} % from its neighbours (${band} %)`, () => {
      near(readTable(without(table, k), massPercent, 'log'), millisiemens, neighbours);
    });
  });
}

for (const [id, massPercent, millisiemens] of [
  ['NaCl', 10, 126],
  ['NaNO3', 10, 82.6],
] as const) {
  check('crcConductivity', `${massPercent} % ${id} as a recipe at 20 °C: ${millisiemens} mS/cm`, () => {
    const strength = (massPercent / (100 - massPercent)) * waterDensity(20);
    const bath = dissolve(
      { facts: bathSalts[id], hydrate: null },
      si<'massConcentration'>(strength),
      si<'temperature'>(293.15),
    );
    near(bath.conductivity * 10, millisiemens, 1e-6);
  });
}
