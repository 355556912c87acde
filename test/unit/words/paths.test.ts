import { describe, expect, it, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { checkBasisOf } from '../../../src/lib/procedure/check-basis.ts';
import { changeText } from '../../../src/lib/words/en/paths.ts';
import { cuff, pendant } from '../../fixtures/jobs.ts';

describe('a change in words', () => {
  it.each([
    ['cathode.gap', '0.03', '0.04', 'Gap: 30 mm before, 40 mm now.'],
    ['bath.salt', '"NaNO3"', '"KNO3"', 'Salt: sodium nitrate before, potassium nitrate now.'],
    ['bath.temperature', '293.15', '298.15', 'Bath temperature: 20 °C before, 25 °C now.'],
    ['piece.openArea', 'null', '0.0004', 'Bare area: not there before, 4 cm² now.'],
    ['piece.through', 'false', 'true', 'Right through: no before, yes now.'],
    [
      'run_time',
      '28 min (24 to 33)',
      '30 min (26 to 36)',
      'Time with current on: 28 min (24 to 33) before, 30 min (26 to 36) now.',
    ],
  ])('%s', (path, before, after, text) => {
    // a no-break space stands before a unit
    expect(changeText({ path, before, after }).replaceAll('\u00a0', ' ')).toBe(text);
  });
});

test('every input of a plan has a name of its own', () => {
  for (const raw of [pendant(), cuff()]) {
    const parsed = parseJob(raw);
    if ('faults' in parsed) throw new Error('faulty fixture');
    for (const path of Object.keys(checkBasisOf(planJob(parsed.job)).inputs)) {
      expect(changeText({ path, before: null, after: null }).startsWith(path), path).toBe(false);
    }
  }
});
