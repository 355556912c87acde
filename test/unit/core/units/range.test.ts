import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { RANGE_Z, rangeEnds } from '../../../../src/lib/core/units/range.ts';
import { normalQuantile } from '../../../../src/lib/core/units/sample.ts';
import { jobOf, pendant } from '../../../fixtures/jobs.ts';

const src = fileURLToPath(new URL('../../../../src', import.meta.url));

test('a range leaves out one case in twenty at each end', () => {
  expect(rangeEnds).toEqual({ low: 0.05, high: 0.95 });
  expect(rangeEnds.low + rangeEnds.high).toBe(1);
  expect(RANGE_Z).toBe(1.645);
  expect(RANGE_Z).toBeCloseTo(normalQuantile(rangeEnds.high), 3);
});

test('nobody else writes down where a range ends', () => {
  const own = ['lib/core/units/range.ts'];
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(ts|svelte)$/.test(file) && !own.includes(file),
  );
  const texts = new Map(files.map((file) => [file, readFileSync(join(src, file), 'utf8')]));
  const code = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
  const copies = [...texts].filter(([, text]) =>
    /\b1\.64\d*|uantile(?:Of)?\([^)]*\b0\.[09]5\b/.test(code(text)),
  );
  // of the bare metal, not of what may be true: no range
  const evenness = 'lib/core/field/evenness.ts';
  expect(copies.map(([file]) => file).toSorted()).toEqual([evenness]);
  const users = [...texts].filter(([, text]) => text.includes('units/range.ts')).map(([file]) => file);
  expect(users.toSorted()).toEqual([
    'lib/core/cell/resistance.ts',
    'lib/core/chemistry/jars.ts',
    'lib/core/learn/bite-rate.ts',
    'lib/core/learn/cell-line.ts',
    'lib/core/plan/budget.ts',
    'lib/core/plan/influence.ts',
    'lib/core/plan/ranges.ts',
    'lib/core/plan/trade-pace.ts',
    'lib/session/look-back.ts',
    'lib/words/en/papers.ts',
  ]);
});

describe('with wider ends', () => {
  afterEach(() => {
    vi.doUnmock('../../../../src/lib/core/units/range.ts');
    vi.resetModules();
  });

  /** What several users of the ends tell, with the modules loaded afresh. */
  async function told() {
    vi.resetModules();
    const { planJob } = await import('../../../../src/lib/core/plan/plan-job.ts');
    const { learnt } = await import('../../../../src/lib/core/learn/bite-rate.ts');
    const { influencesFor } = await import('../../../../src/lib/core/plan/questions.ts');
    const job = jobOf(pendant());
    const { depth, run_time: time } = planJob(job).figures;
    const rate = learnt(0.95, [{ id: 'a', rate: 0.9, way: 'mass', off: 0 }]);
    const area = influencesFor(job).find(({ id }) => id === 'areaFactor');
    if (!depth || !time || !rate || !area) throw new Error('nothing told');
    const width = ({ low, high }: { low: number; high: number }): number => Math.log(high / low);
    return [depth, time, rate, area].map(width);
  }

  test('figures, the learnt rate and the influences all widen', async () => {
    const before = await told();
    vi.doMock('../../../../src/lib/core/units/range.ts', () => ({
      rangeEnds: { low: 0.025, high: 0.975 },
      RANGE_Z: 1.96,
    }));
    const after = await told();
    after.forEach((width, n) => {
      expect(width, String(n)).toBeGreaterThan(1.1 * (before[n] ?? NaN));
      expect(width, String(n)).toBeLessThan(1.6 * (before[n] ?? NaN));
    });
  });
});
