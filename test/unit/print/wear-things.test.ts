import { expect, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { thingsOf } from '../../../src/lib/print/wear-page.ts';
import { patched, tokens } from '../../fixtures/jobs.ts';

// what is worn for a bath: core/facts/wear.ts, from the labels of what each metal leaves in it
test.each([
  ['C26000', 'NaCl', 'salt-water-bath'],
  ['C11000', 'KCl', 'salt-water-bath'],
  ['C11000', 'Na2SO4', 'copper-bath'],
  ['C75200', 'NaCl', 'nickel-bath'],
  ['mild-steel', 'NaCl', 'iron-bath'],
  ['C36000', 'NaCl', 'leaded-brass-bath'],
  ['sterling-925', 'NaNO3', 'silver-bath'],
])('%s in %s is dressed for as a %s', (metal, salt, bath) => {
  const raw = patched(tokens(), { 'piece.metal': metal, 'cathode.metal': metal, 'bath.salt': salt });
  const parsed = parseJob(raw);
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  expect(thingsOf(planJob(parsed.job))).toContain(bath);
});
