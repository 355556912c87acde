import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { refusalRules, warningRules } from '../../src/lib/core/rules/index.ts';
import { checks, checksOf, holdIds } from '../../src/lib/procedure/checks.ts';
import { checkTexts, fixText, holdTexts, optionText } from '../../src/lib/words/en/checks.ts';
import { ruleCases } from '../fixtures/rule-cases.ts';
import { checkBases } from './steps.ts';

const rules = fileURLToPath(new URL('../../src/lib/core/rules', import.meta.url));
const shared = new Set(['judge-pairing.ts', 'rule.ts', 'term.ts', 'asks.ts', 'index.ts']);

describe('every check', () => {
  test.each(checks.map((check) => [check.id, check] as const))(
    '%s is worded, and each wrong answer leads on',
    (id, check) => {
      const text = checkTexts[id];
      expect(text.asks).not.toBe('');
      if (check.kind !== 'choice') expect(fixText(id, check.kind) ?? '').not.toBe('');
      else {
        for (const option of check.options) {
          expect(optionText(id, option.id), option.id).not.toBe('');
          expect((fixText(id, option.id) ?? '') === '', option.id).toBe(option.ok);
        }
        for (const id of Object.keys(text.means ?? {}))
          expect(check.options.find((option) => option.id === id)?.ok, id).toBe(true);
        expect(check.options.filter(({ ok }) => ok).length).toBeGreaterThan(0);
        expect(check.options.filter(({ ok }) => !ok).length).toBeGreaterThan(0);
      }
    },
  );
  test('the right answer stands in no fixed place', () => {
    const places = checks.flatMap((check) =>
      check.kind === 'choice' ? [check.options.findIndex(({ ok }) => ok)] : [],
    );
    expect(new Set(places).size).toBeGreaterThan(2);
  });
});

describe('every hold', () => {
  test.each(checkBases.map((basis, i) => [i, basis] as const))(
    'of plan %i has 3 to 9 checks; a pause asks at most 4 anew, a look at most 2',
    (_, basis) => {
      for (const hold of holdIds) {
        // initials close a hold; they ask for no look of their own
        const open = checksOf(hold, basis).filter(({ kind }) => kind !== 'initials');
        const critical = open.filter((check) => check.critical);
        expect(open.length, hold).toBeGreaterThanOrEqual(3);
        expect(open.length, hold).toBeLessThanOrEqual(9);
        expect(critical.length, hold).toBeLessThanOrEqual(4);
        expect(critical.length, hold).toBeGreaterThan(0);
        expect(open.filter((check) => check.changedByStop).length, hold).toBeLessThanOrEqual(2);
        expect(holdTexts[hold].title).not.toBe('');
      }
    },
  );
});

test('polarity is looked at last, dressed before it, and never by switching on', () => {
  for (const basis of checkBases) {
    const power = checksOf('power', basis).filter(({ kind }) => kind !== 'initials');
    expect(power.at(-1)?.id).toBe('piece-clip');
    expect(power[0]?.id).toBe('dressed');
  }
});

test('a class closes each hold with two sets of initials, and nobody else is asked for any', () => {
  const taught = checkBases.filter(({ inputs }) => inputs['place.use'] === '"teaching"');
  expect(taught).toHaveLength(1);
  for (const basis of checkBases) {
    for (const hold of holdIds) {
      const all = checksOf(hold, basis);
      const asked = all.filter(({ kind }) => kind === 'initials');
      expect(asked.length, hold).toBe(taught.includes(basis) ? 1 : 0);
      if (asked.length > 0) expect(all.at(-1)).toBe(asked[0]);
    }
  }
});

describe('every rule', () => {
  const ids = [...refusalRules, ...warningRules].map(({ id }) => id);
  test('has a case that it speaks about and one that it is silent about', () => {
    expect(Object.keys(ruleCases).sort()).toEqual([...ids].sort());
  });
  test('has a file of its own, named after it', () => {
    const files = readdirSync(rules).filter((file) => !shared.has(file));
    expect(files.sort()).toEqual(ids.map((id) => `${id}.ts`).sort());
    for (const id of ids) expect(readFileSync(join(rules, `${id}.ts`), 'utf8')).toContain(`id: '${id}'`);
  });
  test('names a source', () => {
    for (const { id, sources } of [...refusalRules, ...warningRules])
      expect(sources.length, id).toBeGreaterThan(0);
  });
});
