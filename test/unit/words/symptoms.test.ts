import { describe, expect, test } from 'vitest';
import { anyBench, symptomFacts, symptomIds, symptomsOn } from '../../../src/lib/core/facts/symptoms.ts';
import type { SymptomBench, SymptomId } from '../../../src/lib/core/facts/symptoms.ts';
import { symptomBenchOf } from '../../../src/lib/core/plan/symptom-bench.ts';
import {
  symptomLabel,
  symptomOn,
  symptomsByGroup,
  symptomSources,
} from '../../../src/lib/words/en/symptoms.ts';
import { pendantDraft, planOfDraft } from '../../fixtures/job-at.ts';
import type { Draft } from '../../../src/lib/session/draft.ts';

const benchOf = (has: Partial<Draft>): SymptomBench =>
  symptomBenchOf(planOfDraft({ ...pendantDraft, ...has }).job);
const adapter: Partial<Draft> = {
  'supply.kind': 'adapter',
  'supply.amps': 'no',
  'supply.volts': '5',
  'supply.maxAmps': '2',
};
const copper: Partial<Draft> = { 'piece.metal': 'C11000', 'bath.salt': 'NaCl', 'bath.strength': '50' };
const brass: Partial<Draft> = { ...copper, 'piece.metal': 'C26000' };

const benches: Readonly<Record<string, SymptomBench>> = {
  'no job': anyBench,
  silver: benchOf({}),
  'silver on an adapter': benchOf(adapter),
  'silver, no meter': benchOf({ 'supply.amps': 'no', 'supply.maxAmps': '' }),
  'silver on a battery': benchOf({ ...adapter, 'supply.kind': 'battery', 'supply.volts': '9' }),
  'silver opposite stainless steel': benchOf({ 'cathode.metal': 'stainless' }),
  copper: benchOf(copper),
  brass: benchOf(brass),
};
const told = (bench: SymptomBench): string =>
  symptomsByGroup(bench)
    .flatMap(({ list }) => list.flatMap(({ label, cause, now, next }) => [label, cause, now, next]))
    .join('\n');

describe.each(Object.entries(benches))('%s', (_, bench) => {
  const all = symptomsByGroup(bench).flatMap(({ list }) => list);
  test('is told each sign once, in three parts that say something of their own', () => {
    expect(all.map(({ id }) => id).toSorted()).toEqual([...symptomsOn(bench)].toSorted());
    for (const { id, label, cause, now, next } of all) {
      const parts = [label, cause, now, next];
      expect(new Set(parts).size, id).toBe(4);
      for (const part of parts) expect(part.split(' ').length, `${id}: ${part}`).toBeGreaterThan(1);
      for (const part of [cause, now, next]) expect(part, id).toMatch(/^[A-Z].*\.$/);
    }
    expect(new Set(all.map(({ label }) => label)).size).toBe(all.length);
  });
  test('has a sign in every group', () => {
    for (const { group, list } of symptomsByGroup(bench)) expect(list.length, group).toBeGreaterThan(0);
  });
});

test('all that makers ask about is there', () => {
  const asked: readonly SymptomId[] = [
    'no-bubbles',
    'uneven',
    'film-pink',
    'white',
    'film-black',
    'lift',
    'scum',
    'brown',
    'cloudy',
    'pool',
    'ages',
  ];
  for (const id of asked) expect(symptomsOn(anyBench), id).toContain(id);
  expect(symptomsOn(anyBench)).toEqual(symptomIds);
  expect(symptomSources.length).toBeGreaterThan(3);
});

describe('said for what is there', () => {
  const hears = (name: keyof typeof benches): string => told(benches[name] as SymptomBench);
  test('amps are spoken of only where the supply shows them', () => {
    expect(hears('silver')).toMatch(/\bamps\b/);
    for (const name of ['silver on an adapter', 'silver, no meter', 'silver on a battery'])
      expect(hears(name), name).not.toMatch(/\bamps\b|amp-hours/i);
  });
  test('a knob only where there is one, and what else makes less current', () => {
    expect(hears('silver')).toMatch(/set fewer amps/);
    expect(hears('silver, no meter')).toMatch(/set fewer volts/);
    for (const name of ['silver on an adapter', 'silver on a battery']) {
      expect(hears(name), name).not.toMatch(/\bknobs?\b|set fewer/i);
      expect(hears(name), name).toMatch(/hang the plate further off/);
    }
  });
  test('a battery has no plug, and a plug is no battery', () => {
    expect(hears('silver on a battery')).not.toMatch(/\bplug\b/i);
    expect(hears('silver')).not.toMatch(/\bbattery\b/i);
    expect(hears('no job')).toMatch(/Pull the plug, or take a lead off at the battery/);
  });
  test('silver only where there is some', () => {
    for (const name of ['copper', 'brass']) expect(hears(name), name).not.toMatch(/silver|black crust/i);
    expect(symptomsOn(benches['silver'] as SymptomBench)).toEqual(
      expect.arrayContaining(['crust', 'ages', 'trees']),
    );
  });
  test('copper that held silver before keeps what can explode', () => {
    const bench = { ...(benches['copper'] as SymptomBench), holdsSilver: true };
    expect(symptomsOn(bench)).toContain('crust');
    expect(symptomOn('ammonia', bench).now).toMatch(/explode/);
  });
  test('pink is zinc on brass, copper on sterling, and nothing on copper', () => {
    expect(symptomOn('film-pink', benches['brass'] as SymptomBench).cause).toMatch(/Zinc/);
    expect(symptomOn('film-pink', benches['silver'] as SymptomBench).cause).toMatch(/Copper/);
    expect(symptomsOn(benches['copper'] as SymptomBench)).not.toContain('film-pink');
  });
  test('chlorine and ammonia are told by what the bath is made of', () => {
    const [nitrate, chloride] = [benches['silver'], benches['copper']] as [SymptomBench, SymptomBench];
    expect(symptomOn('pool', chloride).cause).toMatch(/Salt water gives it off/);
    expect(symptomOn('pool', nitrate).cause).toMatch(/this bath should not make/);
    expect(symptomOn('ammonia', nitrate).cause).toMatch(/nitrate/);
    expect(symptomOn('ammonia', chloride).cause).toMatch(/should make none/);
    expect(symptomOn('fall', nitrate).cause).not.toMatch(/chlorine/);
    expect(symptomOn('fall', anyBench).cause).toMatch(/chlorine/);
  });
  test('green is told by the plate that hangs', () => {
    const ids = symptomsOn(benches['silver opposite stainless steel'] as SymptomBench);
    expect(ids).toContain('green-stainless');
    expect(ids).not.toContain('scum');
    expect(symptomsOn(benches['copper'] as SymptomBench)).toContain('scum');
  });
});

describe('what can hurt', () => {
  test('comes first, and power goes off before it', () => {
    const grave = symptomIds.filter((id) => symptomFacts[id].group === 'grave');
    expect(symptomIds.slice(0, grave.length)).toEqual(grave);
    for (const id of grave) expect(symptomFacts[id].off, id).toBe(true);
  });
  test.each(Object.entries(benches))('is told whole: %s', (_, bench) => {
    expect(symptomOn('pool', bench).now).toMatch(/leave.*air.*come back.*no acid/);
    if (!symptomsOn(bench).includes('crust')) return;
    expect(symptomOn('crust', bench).now).toMatch(/^Do not touch it\..*explode.*fire service/);
    for (const id of ['film-black', 'ages'] as const)
      if (symptomsOn(bench).includes(id))
        expect(symptomOn(id, bench).now, id).toMatch(/do not touch it|hands off/);
    expect(symptomOn('ammonia', bench).now).toMatch(/do not close, move, dry, scrape, shake or treat it/i);
  });
});

test('a stored symptom is named, an unknown one is not', () => {
  expect(symptomLabel('no-bubbles')).toMatch(/Nothing happens/);
  const everStored =
    'hot-clip pool ammonia yellow hot jump fall fizz-piece lift no-bubbles white green-stainless scum';
  for (const id of everStored.split(' ')) expect(symptomLabel(id), id).not.toBeNull();
  expect(symptomLabel('of a later version')).toBeNull();
  expect(symptomLabel(null)).toBeNull();
});
