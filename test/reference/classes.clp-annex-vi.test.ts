import { expect } from 'vitest';
import { substances } from '../../src/lib/core/facts/substances.ts';
import type { HazardCode, Substance } from '../../src/lib/core/facts/substances.ts';
import { pictogramsOf } from '../../src/lib/core/facts/substances/pictograms.ts';
import { labelStatements } from '../../src/lib/core/facts/substances/statements.ts';
import { annexVI } from '../fixtures/clp-annex-vi.ts';
import { check } from './check.ts';

const ours: Readonly<Record<string, Substance>> = substances;

for (const [id, row] of Object.entries(annexVI)) {
  const published = row.hazards as readonly HazardCode[];
  check('clpAnnexVI', `${row.index}, ${id}: statements ${row.hazards.join(' ')}`, () => {
    // the label leaves out what a stronger statement says: compare what both come to
    expect(labelStatements(ours[id]?.hazards ?? [])).toEqual(labelStatements(published));
    // and a label never says what the law does not
    expect(ours[id]?.hazards.filter((code) => !published.includes(code))).toEqual([]);
    expect(ours[id]).toMatchObject({ annexVI: row.index, signal: row.signal, basis: 'harmonised' });
  });
  check('clpAnnexVI', `${row.index}, ${id}: pictograms ${row.pictograms.join(' ')} by rule`, () => {
    expect(pictogramsOf(published)).toEqual([...row.pictograms].sort());
    expect(pictogramsOf(ours[id]?.hazards ?? [])).toEqual([...row.pictograms].sort());
  });
}
