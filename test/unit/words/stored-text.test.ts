import { describe, expect, test } from 'vitest';
import type { SaltId } from '../../../src/lib/core/facts/salts.ts';
import { supplyKindOf } from '../../../src/lib/core/facts/supplies.ts';
import { defaultReadingUnits } from '../../../src/lib/core/job/reading-units.ts';
import type { Plan } from '../../../src/lib/core/plan/plan.ts';
import { saltNames } from '../../../src/lib/words/en/materials.ts';
import { changeText } from '../../../src/lib/words/en/paths.ts';
import { planInWords } from '../../../src/lib/words/en/plan-summary.ts';
import { printPlan } from '../../../src/lib/words/en/printed-plan.ts';
import { phrase } from '../../../src/lib/words/en/render.ts';
import { supplyOffTexts } from '../../../src/lib/words/en/run.ts';
import { bathLine } from '../../../src/lib/words/en/shelf.ts';
import { storedText } from '../../../src/lib/words/en/stored-text.ts';
import { pendant, planOf } from '../../fixtures/jobs.ts';

const refusals = (plan: Plan): string => JSON.stringify(printPlan(plan).refusals);

describe('what nobody can tell', () => {
  test('is an unknown supply where a supply is asked for', () => {
    expect(changeText({ path: 'supply.kind', before: '"bench"', after: '"unknown"' })).toBe(
      'Supply: bench supply before, unknown supply now.',
    );
    expect(refusals(planOf(pendant(), { 'supply.kind': 'unknown' }))).toContain(
      'A supply of the kind “unknown supply” cannot be used',
    );
  });
  test('is an unknown metal where a metal is', () => {
    expect(changeText({ path: 'piece.metal', before: '"C11000"', after: '"unknown"' })).toBe(
      'Metal: copper before, unknown metal now.',
    );
    expect(refusals(planOf(pendant(), { 'piece.metal': 'unknown' }))).toContain(
      'Unknown metal is not etched here',
    );
  });
});

describe('a record of another version', () => {
  test('that names a salt which this one does not know has it told by its id', () => {
    expect(storedText(saltNames, 'NaNO3')).toBe('sodium nitrate');
    expect(storedText(saltNames, 'NaClO4')).toBe('NaClO4');
    expect(storedText(saltNames, 'toString')).toBe('toString');
    expect(bathLine('NaClO4', 50)).toBe('NaClO4, 50\u00a0g/L');
  });
  test('shows its plan, with every line of work', () => {
    const plan = planOf(pendant());
    const old: Plan = {
      ...plan,
      job: { ...plan.job, bath: { ...plan.job.bath, salt: 'NaClO4' as SaltId } },
      instructions: plan.instructions.map((line) =>
        line.id === 'weigh-salt' ? { ...line, params: { ...line.params, salt: 'NaClO4' as SaltId } } : line,
      ),
    };
    expect(planInWords(old).what).toBe('sterling silver in NaClO4');
    expect(JSON.stringify(printPlan(old).steps)).toContain('of NaClO4.');
  });
  test('that names a supply which this one does not know is unplugged', () => {
    expect(supplyKindOf('bench')).toBe('bench');
    expect(supplyKindOf('wind')).toBe('unknown');
    expect(supplyOffTexts('wind', false)).toBe(supplyOffTexts('unknown', false));
    expect(supplyOffTexts('wind', false).asks).toContain('unplug');
  });
});

test('a name that the maker gave stands as it is, also where it is an id', () => {
  const told = (record: string): string =>
    JSON.stringify(printPlan(planOf(pendant(), { 'bath.record': record })).steps);
  expect(told('C11000')).toContain('Take the bath C11000 from the shelf');
  expect(phrase('{a} and {b}', { a: { text: 'NaCl' }, b: 'NaCl' }, defaultReadingUnits)).toBe(
    'NaCl and table salt (sodium chloride)',
  );
});
