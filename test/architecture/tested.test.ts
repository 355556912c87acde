import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { sources } from '$lib/core/facts/sources.ts';
import type { Source } from '$lib/core/facts/sources.ts';
import { refusalRules, warningRules } from '$lib/core/rules/index.ts';
import { hazardTable } from '../fixtures/hazards.ts';
import { ruleCases } from '../fixtures/rule-cases.ts';
import { oracleSources } from '../reference/oracles/sources.ts';
import { sourceTests } from '../fixtures/source-tests.ts';

/** What comes without a test is found here. Migrations are held to their cases in their own test. */

const folder = fileURLToPath(new URL('../../src/lib/core/rules', import.meta.url));
/** files of the room that are no rule */
const noRules = ['index.ts', 'rule.ts', 'term.ts', 'asks.ts', 'judge-pairing.ts'];
const modules = import.meta.glob<Record<string, unknown>>('../../src/lib/core/rules/*.ts', { eager: true });
const rules: readonly { readonly id: string }[] = [...refusalRules, ...warningRules];

describe('rules', () => {
  const files = readdirSync(folder).filter((file) => !noRules.includes(file));
  test('stand one a file, the file named by the rule', () => {
    expect(files.map((file) => file.replace(/\.ts$/, '')).toSorted()).toEqual(
      rules.map(({ id }) => id).toSorted(),
    );
    for (const file of files) {
      const exported = Object.values(modules[`../../src/lib/core/rules/${file}`] ?? {});
      expect(exported, file).toHaveLength(1);
      expect(rules, file).toContain(exported[0]);
    }
  });
  test('have a job that they speak about and one that they are silent about', () => {
    expect(Object.keys(ruleCases).toSorted()).toEqual(rules.map(({ id }) => id).toSorted());
    for (const [id, { speaks, silent }] of Object.entries(ruleCases))
      expect(JSON.stringify(speaks), id).not.toBe(JSON.stringify(silent));
  });
  test('of the gravest kind answer a hazard of the table', () => {
    const answering = new Set<string>(hazardTable.flatMap((row) => row.rules));
    const dangers = refusalRules.map(({ id }): string => id);
    // these refuse a job that cannot be planned; nobody is hurt by it
    const harmless = [
      'base-plate-with-silver',
      'chloride-on-silver',
      'passive-metal',
      'metal-without-data',
      'above-solubility',
      'outside-tables',
      'does-not-fit',
      'too-few-volts',
    ];
    expect(dangers.filter((id) => !answering.has(id) && !harmless.includes(id))).toEqual([]);
  });
});

describe('sources', () => {
  const all: Readonly<Record<string, Source>> = { ...sources, ...oracleSources };
  test('are each checked against, or say why not', () => {
    expect(Object.keys(sourceTests).toSorted()).toEqual(Object.keys(all).toSorted());
  });
  test('that are recalled or ours say so, and no read one hides behind that', () => {
    for (const [id, held] of Object.entries(sourceTests)) {
      const how = all[id]?.how;
      if (!('without' in held)) continue;
      if (held.without === 'ours') expect(how, id).toBe('own');
      if (held.without === 'recalled') expect(how, id).toBe('memory');
    }
  });
});
