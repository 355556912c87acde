import { expect, test } from 'vitest';
import { blankDraft } from '../../../src/lib/session/draft.ts';
import { filledDraft, jobFileOf, unchosenIn } from '../../../src/lib/session/job-file.ts';
import { planDraft } from '../../../src/lib/work/plan-draft.ts';
import { faultText } from '../../../src/lib/words/en/faults.ts';
import { pendantDraft } from '../../fixtures/job-at.ts';

test('a supply that nobody has chosen is missing, though a job file may leave it out', () => {
  expect(unchosenIn(blankDraft)).toEqual([]);
  const draft = { ...pendantDraft, 'supply.kind': '' };
  const [fault] = unchosenIn(draft);
  expect(fault && faultText(fault, 'supply.kind')).toBe('Missing: the supply. Choose one.');
});

test.each([
  ['piece.metal', 'Missing: the metal. Choose one.'],
  ['bath.salt', 'Missing: the salt. Choose one.'],
] as const)('%s that nobody has chosen is asked for as a choice', (field, text) => {
  const draft = { ...pendantDraft, [field]: '' };
  const { faults } = planDraft({ typed: jobFileOf(draft), filled: jobFileOf(filledDraft(draft)) });
  const fault = faults.find(({ path }) => path === field);
  expect(fault && faultText(fault, field)).toBe(text);
});
