import { describe, expect, test } from 'vitest';
import type { Table } from '../../../../src/lib/core/facts/datum.ts';
import { allSalts } from '../../../../src/lib/core/facts/salts.ts';
import { sources } from '../../../../src/lib/core/facts/sources.ts';
import type { Source } from '../../../../src/lib/core/facts/sources.ts';
import { dataVersion } from '../../../../src/lib/core/facts/version.ts';
import { figureUnits } from '../../../../src/lib/core/plan/outcome.ts';
import { refusalRules, warningRules } from '../../../../src/lib/core/rules/index.ts';
import { unitsOf } from '../../../../src/lib/core/units/convert.ts';
import { dimensions } from '../../../fixtures/dimensions.ts';
import { solveCell } from '../../../../src/lib/core/cell/solved-field.ts';
import { planJob } from '../../../../src/lib/core/plan/plan-job.ts';
import { oracleSources } from '../../../reference/oracles/sources.ts';
import { cuff, jobOf, pendant, planOf, tokens } from '../../../fixtures/jobs.ts';

/** An entry of the tables: anything that names a source. */
interface Entry {
  readonly path: string;
  readonly entry: Readonly<Record<string, unknown>>;
}

const modules = import.meta.glob<Record<string, unknown>>(
  ['../../../../src/lib/core/facts/**/*.ts', '../../../reference/oracles/*.ts', '!**/*.test.ts'],
  { eager: true },
);
const known: Readonly<Record<string, Source>> = { ...sources, ...oracleSources };

function entriesOf(path: string, value: unknown, found: Entry[], seen: Set<unknown>): Entry[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return found;
  seen.add(value);
  if ('source' in value) found.push({ path, entry: value });
  for (const [key, inner] of Object.entries(value)) entriesOf(`${path}.${key}`, inner, found, seen);
  return found;
}

const entries = Object.entries(modules).flatMap(([file, module]) => {
  const room = file.replace(/^.*\/facts\//, '');
  return entriesOf(room, { ...module, sources: null, oracleSources: null, tables: null }, [], new Set());
});
const facts = entries.filter(({ entry }) => 'locator' in entry);
/** facts that are numbers: the rest are backings of sentences */
const data = facts.filter(({ entry }) => 'unit' in entry);
/** First and last x of a table; undefined for a table that nobody has measured. */
const ends = (table: Table | null) => (table === null ? undefined : [table.x[0], table.x.at(-1)]);
const at = (wrong: readonly Entry[]) => wrong.map(({ path }) => path);

describe('the tables', () => {
  test('are found', () => {
    expect(data.length).toBeGreaterThan(100);
  });
  test('name known sources only', () => {
    expect(at(entries.filter(({ entry }) => !Object.hasOwn(known, String(entry['source']))))).toEqual([]);
  });
  test('say where in the source', () => {
    expect(at(facts.filter(({ entry }) => String(entry['locator']).trim() === ''))).toEqual([]);
  });
  test('hold finite values', () => {
    const loose = data.filter(({ entry }) => 'value' in entry && !Number.isFinite(entry['value']));
    expect(at(loose)).toEqual([]);
  });
  test('are valid from a lower to an upper limit', () => {
    const wrong = data.filter(({ entry }) =>
      Object.values(entry['validFor'] as Record<string, [number, number, string]>).some(
        ([low, high, unit]) => !(low <= high) || unit === '',
      ),
    );
    expect(at(wrong)).toEqual([]);
  });
  test('give uncertainties that are positive, and bands around their value', () => {
    const wrong = data.filter(({ entry }) => {
      const uncertainty = entry['uncertainty'] as {
        kind: string;
        value?: number;
        low?: number;
        high?: number;
      };
      const { kind, value, low = NaN, high = NaN } = uncertainty;
      if (kind === 'band') return !(low <= Number(entry['value']) && Number(entry['value']) <= high);
      return kind === 'standard' || kind === 'relative' ? !(Number(value) > 0) : false;
    });
    expect(at(wrong)).toEqual([]);
  });
  test('use units that a maker may type or that are listed', () => {
    const listed = new Set<string>([
      ...dimensions.flatMap((dimension) => unitsOf(dimension)),
      ...Object.values(figureUnits),
      ...[
        'g/100g water',
        'mass %',
        '%/K',
        'W/m2K',
        'J/kgK',
        'm2/s',
        'mol/m3',
        'm3/mol',
        'mg/m3',
        'ug/cm2/week',
        'A.h/L',
      ],
    ]);
    const named = data.flatMap(({ path, entry }) => [
      [path, entry['unit']],
      ...(entry['xUnit'] === undefined ? [] : [[path, entry['xUnit']]]),
      ...Object.values(entry['validFor'] as Record<string, [number, number, string]>).map((v) => [
        path,
        v[2],
      ]),
    ]);
    expect(named.filter(([, unit]) => !listed.has(String(unit)))).toEqual([]);
  });
  test('are tabulated upwards, a y for each x', () => {
    const wrong = data.filter(({ entry }) => {
      const { x, y } = entry as { x?: number[]; y?: number[] };
      return x !== undefined && (x.length !== y?.length || x.some((q, i) => i > 0 && q <= (x[i - 1] ?? q)));
    });
    expect(at(wrong)).toEqual([]);
  });
  test('limit a table to its own points', () => {
    for (const { solubility, conductivity, density } of Object.values(allSalts)) {
      expect(solubility?.validFor['temperature']?.slice(0, 2)).toEqual(ends(solubility));
      expect(conductivity?.validFor['massPercent']?.slice(0, 2)).toEqual(ends(conductivity));
      expect(density.validFor['massPercent']?.slice(0, 2)).toEqual(ends(density));
    }
  });
});

describe('the sources', () => {
  const all = Object.entries(known);

  test('are each used by a datum, a rule or a working', () => {
    const plans = [
      planJob(jobOf(pendant()), solveCell),
      planOf(cuff()),
      planOf(tokens()),
      planOf(cuff(), { 'bath.salt': 'Na2SO4' }),
    ];
    const own = entries.filter(({ path }) => !path.includes('/oracles/'));
    const used = new Set<string>([
      ...own.map(({ entry }) => String(entry['source'])),
      ...[...refusalRules, ...warningRules].flatMap((rule): readonly string[] => rule.sources),
      ...plans.flatMap(({ figures }) => Object.values(figures).flatMap(({ working }) => working.sources)),
    ]);
    expect(Object.keys(sources).filter((id) => !used.has(id))).toEqual([]);
    const drawnOn = new Set(entries.map(({ entry }) => String(entry['source'])));
    expect(Object.keys(oracleSources).filter((id) => !drawnOn.has(id))).toEqual([]);
  });
  test('have titles, each its own', () => {
    const titles = all.map(([, { title }]) => title);
    expect(titles.filter((title, i) => title.trim() === '' || titles.indexOf(title) !== i)).toEqual([]);
  });
  test('have well-formed addresses where they have any', () => {
    const wellFormed = /^(doi:10\.\d{4,9}\/[^\s"<>]+|https:\/\/[^\s/]+\.[^\s]+)$/;
    const wrong = all.filter(([, { address }]) => address !== undefined && !wellFormed.test(address));
    expect(wrong.map(([id]) => id)).toEqual([]);
  });
});

test('the data version is a date and a fingerprint', () => {
  expect(dataVersion).toMatch(/^\d{4}-\d{2}-\d{2}\.[0-9a-f]{8}$/);
});
