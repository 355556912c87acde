import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { parseJob } from '../../../src/lib/core/plan/job-input.ts';
import type { JobInput } from '../../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../../src/lib/core/plan/plan-job.ts';
import { checkBasisOf } from '../../../src/lib/procedure/check-basis.ts';
import { changeText } from '../../../src/lib/words/en/paths.ts';
import { amount, cuff, jobOf, patched, pendant, tokens } from '../../fixtures/jobs.ts';
import { arbitraryJob } from '../../property/arbitrary-job.ts';

// a no-break space stands before a unit
const textOf = (...change: Parameters<typeof changeText>): string =>
  changeText(...change).replaceAll('\u00a0', ' ');

describe('a change in words', () => {
  it.each([
    ['cathode.gap', '0.03', '0.04', 'Gap: 30 mm before, 40 mm now.'],
    ['bath.salt', '"NaNO3"', '"KNO3"', 'Salt: sodium nitrate before, potassium nitrate now.'],
    ['bath.temperature', '293.15', '298.15', 'Bath temperature: 20 °C before, 25 °C now.'],
    ['piece.openArea', 'null', '0.0004', 'Bare area: not there before, 4 cm² now.'],
    ['piece.through', 'false', 'true', 'Right through: no before, yes now.'],
    ['piece.faceArea', '0.0012', '0.0014', 'Area of the bitten faces: 12 cm² before, 14 cm² now.'],
    ['bath.chargePassed', '0', '362.2', 'Charge the bath has passed: 0 A·h before, 0.1006 A·h now.'],
    ['bath.dissolved.Ag', null, '0.702', 'Silver in the bath: not there before, 702 mg/L now.'],
    ['bath.record', 'null', '"302"', 'Bath: not there before, 302 now.'],
    ['supply.showsAmps', 'true', null, 'Amps on the display: yes before, not there now.'],
    ['supply.kind', '"bench"', '"adapter"', 'Supply: bench supply before, plug-in adapter now.'],
    ['attached', '[]', '["seams","glue"]', 'Things on the piece: none before, soldered seams, glue now.'],
    ['piece.design.cells', '"0f"', '"f0"', 'Drawing: one before, another now.'],
    ['place.country', 'null', '"NZ"', 'Country: not there before, NZ now.'],
    [
      'run_time',
      '28 min (24 to 33)',
      '30 min (26 to 36)',
      'Time with current on: 28 min (24 to 33) before, 30 min (26 to 36) now.',
    ],
  ])('%s', (path, before, after, text) => {
    expect(textOf({ path, before, after })).toBe(text);
  });

  test('is read in the maker’s units, a depth too', () => {
    const units = { units: { length: 'in', temperature: 'degF' } } as const;
    expect(textOf({ path: 'cathode.gap', before: '0.0254', after: '0.0508' }, units)).toBe(
      'Gap: 1 in before, 2 in now.',
    );
    expect(textOf({ path: 'bath.temperature', before: '293.15', after: '303.15' }, units)).toBe(
      'Bath temperature: 68 °F before, 86 °F now.',
    );
    expect(textOf({ path: 'piece.depth', before: '0.0001', after: '0.0002' }, units)).toBe(
      'Depth: 0.0039 in before, 0.0079 in now.',
    );
  });

  test('of an answer of another version does not show its path', () => {
    expect(textOf({ path: 'bath.stirred', before: '1', after: '2' })).not.toContain('bath.stirred');
  });
});

/** Jobs that have every answer between them. */
const jobs: readonly JobInput[] = [
  jobOf(pendant()),
  jobOf(cuff()),
  jobOf(tokens()),
  jobOf(
    patched(pendant(), {
      'piece.at': { y: amount(40, 'mm'), z: amount(30, 'mm') },
      'piece.design': { columns: 1, rows: 1, cells: 'f' },
      'piece.attached': ['seams'],
      hanger: 'wire',
      'bath.dissolved': { Ag: amount(3, 'mg/L') },
      'supply.leads': amount(0.1, 'ohm'),
      'place.country': 'NZ',
    }),
  ),
  ...fc.sample(arbitraryJob, { numRuns: 40, seed: 1 }).flatMap((file) => {
    const parsed = parseJob(file, { areaLater: true });
    return 'job' in parsed ? [parsed.job] : [];
  }),
];

/** A path, or a part of one, as code has it: bath.chargePassed, faceArea. */
const codeName = /[a-z]\.[a-z]|[a-z][A-Z]/;
const counted = ['piece.count', 'piece.design.columns', 'piece.design.rows'];

test('every input of a plan has a name of its own, and every amount its unit', () => {
  const seen = new Map<string, string>();
  for (const job of jobs)
    for (const [path, value] of Object.entries(checkBasisOf(planJob(job)).inputs)) seen.set(path, value);
  expect(seen.size).toBeGreaterThan(50);
  for (const [path, value] of seen) {
    const name = textOf({ path, before: null, after: null }).replace(/:.*/, '');
    expect(name, path).not.toMatch(codeName);
    expect(name, path).not.toContain('does not know');
    if (/^[-\d.e]+$/.test(value) && !counted.includes(path))
      expect(textOf({ path, before: value, after: null }), path).toMatch(
        /\d (mm|cm²|mL|g|g\/L|mg\/L|°C|A·h|V|A|Ω|m³) before/,
      );
  }
});
