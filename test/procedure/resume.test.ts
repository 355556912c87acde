import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isResumable } from '../../src/lib/procedure/resume.ts';
import { finishedJob, liftedJob, mixedJob } from '../fixtures/finished-job.ts';

const AT = 1_764_000_000_000;
const sound = [finishedJob, liftedJob, mixedJob].map((make) => make('a', 'A', AT).snapshot);

test('a snapshot as it was stored is gone on from', () => {
  for (const snapshot of sound) expect(isResumable(JSON.parse(JSON.stringify(snapshot)))).toBe(true);
});

test('what is none is not, whatever it is', () => {
  const context = (sound[0] as { context: object }).context;
  for (const other of [
    null,
    7,
    'metal',
    [],
    {},
    { status: 'active', value: 'nonsense', context },
    { status: 'active', value: { etch: 'elsewhere' }, context },
    { status: 'active', value: { etch: {} }, context },
    { status: 'done', value: 'sheet', context },
    { ...(sound[0] as object), context: {} },
    { ...(sound[0] as object), context: { ...context, runs: 5 } },
    { ...(sound[0] as object), context: { ...context, answers: { gloves: 'on' } } },
  ])
    expect(isResumable(other), JSON.stringify(other).slice(0, 80)).toBe(false);
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (value, inner) => {
      expect(isResumable(value)).toBe(false);
      expect(isResumable({ status: 'active', value: inner, context })).toBe(
        inner === 'metal' || inner === 'electrodes' || inner === 'sheet',
      );
    }),
    { numRuns: 200 },
  );
});
