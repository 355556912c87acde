import { describe, expect, test } from 'vitest';
import { citations } from '../../../src/lib/core/facts/cited.ts';
import { metals } from '../../../src/lib/core/facts/metals.ts';
import { sources } from '../../../src/lib/core/facts/sources.ts';
import { pairingMatrix } from '../../../src/lib/core/rules/judge-pairing.ts';
import { examples } from '../../../src/lib/session/examples.ts';
import { figuresBySource } from '../../../src/lib/words/en/figure-sources.ts';
import { answerOf, answerTo, answersFor, takenFor } from '../../../src/lib/words/en/pairing-answer.ts';
import { saleAnswer, soldStock } from '../../../src/lib/words/en/selling.ts';
import { sourceList } from '../../../src/lib/words/en/source-list.ts';

describe('pairings', () => {
  test('every cell of the table has its sentence, and a refused one a way on', () => {
    for (const { metal, salt, judgement } of pairingMatrix()) {
      const answer = answerOf(metal, salt, judgement);
      expect(answer.why, `${metal} ${salt}`).not.toBe('');
      expect(answer.lines.length > 0, `${metal} ${salt}`).toBe(answer.verdict !== 'good');
      expect(answer.instead.length > 0, `${metal} ${salt}`).toBe(answer.verdict === 'refuse');
    }
  });
  test('a list begins with what goes', () => {
    expect(answersFor('sterling-925')[0]?.salt).toBe('NaNO3');
    expect(answersFor('sterling-925').at(-1)?.verdict).toBe('refuse');
    expect(takenFor('sterling-925')).toEqual(['sodium nitrate', 'potassium nitrate']);
    expect(takenFor('gold')).toEqual([]);
  });
  test('sterling in table salt is refused by the film, and nitrate is named', () => {
    const answer = answerTo('sterling-925', 'NaCl');
    expect(answer.lines.map(({ id }) => id)).toEqual(['chloride-on-silver']);
    expect(answer.instead.join()).toContain('sodium nitrate');
  });
});

describe('sources', () => {
  const jobs = examples().map(({ plan }) => plan.job);
  const list = sourceList(figuresBySource(jobs));
  test('are all there, each with something that rests on it', () => {
    expect(list.map(({ id }) => id).toSorted()).toEqual(Object.keys(sources).toSorted());
    const idle = list.filter(
      ({ facts, rules, figures }) => facts.length + rules.length + figures.length === 0,
    );
    expect(idle.map(({ id }) => id)).toEqual([]);
  });
  test('hold every figure of the examples that names them', () => {
    for (const { plan } of examples())
      for (const { working } of Object.values(plan.figures))
        for (const source of working.sources)
          expect(list.find(({ id }) => id === source)?.figures.length, source).toBeGreaterThan(0);
  });
  test('are found wherever the tables name one', () => {
    expect(citations()).toContainEqual({
      source: 'crcConductivity',
      table: 'allSalts',
      path: ['NaCl', 'conductivity'],
      locator: 'row NaCl, 20 °C',
    });
  });
});

describe('selling', () => {
  test('lead over the limit is refused, nickel asks for a test, the rest goes under its name', () => {
    expect(saleAnswer('C36000').verdict).toBe('refuse');
    expect(saleAnswer('C36000').lines[0]).toContain(String(metals.C36000.composition.massPercent.Pb));
    expect(saleAnswer('C75200').head).toContain('nickel test');
    expect(saleAnswer('C26000').lines.join()).toContain('trace of lead');
    expect(saleAnswer('sterling-925').lines.join()).toContain('hallmark');
    expect(saleAnswer('unknown-yellow').verdict).toBe('refuse');
  });
  test('every stock that is asked for has an answer', () => {
    for (const { id } of soldStock) expect(saleAnswer(id).lines.join('').length).toBeGreaterThan(20);
  });
});
