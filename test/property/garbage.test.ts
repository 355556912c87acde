import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import { cuff, pendant, tokens } from '../fixtures/jobs.ts';
import type { Raw } from '../fixtures/jobs.ts';
import { chunk } from './runs.ts';

/** Paths of all fields of a job, down to the value and unit of each amount. */
function pathsOf(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[...path, key], ...pathsOf(inner, [...path, key])]);
}

const odd = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    '',
    ' ',
    '0',
    'NaN',
    0,
    -1,
    -0,
    1e308,
    5e-324,
    0.5,
    true,
    null,
    [],
    {},
    '__proto__',
  ),
);

/** One field replaced, taken away or put beside the others. */
const mutated = fc
  .tuple(
    fc.constantFrom(pendant(), cuff(), tokens()),
    fc.nat(),
    odd,
    fc.constantFrom('replace', 'remove', 'add'),
    fc.string({ minLength: 1, maxLength: 12 }),
  )
  .map(([base, index, value, how, name]): unknown => {
    const job = structuredClone(base);
    const paths = pathsOf(job);
    const path = paths[index % paths.length] ?? [];
    const key = path.at(-1) ?? '';
    const parent = path.slice(0, -1).reduce((at, step) => at[step] as Raw, job);
    if (how === 'replace') parent[key] = value;
    else if (how === 'remove') Reflect.deleteProperty(parent, key);
    else parent[name] = value;
    return JSON.parse(JSON.stringify(job));
  });

/** Faults that say what was found and expected, or a job that can be planned. */
function holds(raw: unknown): void {
  const parsed = parseJob(raw);
  if ('job' in parsed) {
    expect(() => planJob(parsed.job)).not.toThrow();
    return;
  }
  expect(parsed.faults.length).toBeGreaterThan(0);
  for (const { path, found, expected } of parsed.faults) {
    expect(typeof path).toBe('string');
    expect(found).not.toBe('');
    expect(expected).not.toBe('');
    expect(`${found}${expected}`).not.toMatch(/\n/);
  }
}

test('JSON values of any kind never make parseJob throw', () => {
  fc.assert(fc.property(fc.jsonValue({ maxDepth: 4 }), holds), chunk(1000));
});

test('a job with one field gone wrong never makes parseJob throw', () => {
  fc.assert(fc.property(mutated, holds), chunk(1000, 1));
});
