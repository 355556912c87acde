import { describe, expect, test } from 'vitest';
import { createTestModel, getShortestPaths } from 'xstate/graph';
import { stepIds } from '../../src/lib/core/rules/rule.ts';
import { checksOf, holdIds } from '../../src/lib/procedure/checks.ts';
import type { HoldId } from '../../src/lib/procedure/checks.ts';
import type { ProcedureEvent } from '../../src/lib/procedure/events.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';
import { freshnessOf } from '../../src/lib/procedure/freshness.ts';
import { procedure } from '../../src/lib/procedure/machine.ts';
import { checkBases, pathOf, rightAnswer } from './steps.ts';
import type { Snapshot } from './steps.ts';

test('every step of a job is a state of the procedure, in order', () => {
  expect(Object.keys(procedure.states)).toEqual(stepIds);
});

const plan = checkBases[0] as CheckBasis;
const at = 1_000;

const holdAt: Readonly<Record<string, HoldId>> = {
  'electrolyte.hold': 'mixing',
  'etch.hold': 'power',
  'etch.lifting': 'lifting',
  'etch.strip-lifting': 'lifting',
  'bath.hold': 'storing',
};

/** Every event with every payload that a screen sends. A hold offers each check that is not yet in order. */
function eventsAt(snapshot: Snapshot): ProcedureEvent[] {
  const hold = holdAt[pathOf(snapshot)];
  const next =
    hold && checksOf(hold, plan).find((check) => freshnessOf(check, snapshot.context, at) !== 'fresh');
  return [
    ...(next
      ? [{ type: 'check.answered', check: next.id, value: rightAnswer(next, plan), at } as const]
      : []),
    { type: 'step.finished', at },
    { type: 'step.back' },
    ...(['metal', 'electrolyte', 'etch'] as const).map((step) => ({ type: 'step.chosen', step }) as const),
    { type: 'start.pressed', at },
    { type: 'stop.pressed', at },
    ...(['zero', 'not-zero', 'not-sure'] as const).map(
      (reading) => ({ type: 'meter.read', reading, at }) as const,
    ),
    ...(['deeper', 'enough', 'not-sure'] as const).map(
      (verdict) => ({ type: 'depth.judged', verdict, at }) as const,
    ),
    ...(['on', 'off'] as const).map((says) => ({ type: 'supply.seen', says, at }) as const),
    { type: 'bite.again', at },
    { type: 'job.restored', at },
    { type: 'strip.wanted' },
    { type: 'strip.started', at },
    { type: 'strip.stopped', at },
    { type: 'strip.ended' },
  ];
}

/** Where one stands: the state, how many checks of each hold are in order, and the route. */
const serializeState = (snapshot: Snapshot): string => {
  const { context } = snapshot;
  const inOrder = holdIds.map(
    (hold) => checksOf(hold, plan).filter((check) => freshnessOf(check, context, at) === 'fresh').length,
  );
  return JSON.stringify([
    pathOf(snapshot),
    inOrder,
    context.runs.length > context.runsBeforeMask,
    context.prepared,
  ]);
};

describe('every shortest path', () => {
  const paths = getShortestPaths(procedure, {
    input: { basis: plan },
    events: eventsAt,
    serializeState,
    limit: 400_000,
  }) as unknown as { state: Snapshot; steps: { event: ProcedureEvent; state: Snapshot }[] }[];

  test('is found: all states are reached', () => {
    const reached = new Set(paths.map(({ state }) => pathOf(state)));
    for (const state of [
      'metal',
      'electrodes',
      'electrolyte.recipe',
      'electrolyte.hold',
      'electrolyte.mixing',
      'resist.kind',
      'resist.masking',
      'settings.plan',
      'settings.knobs',
      'etch.hold',
      'etch.running',
      'etch.resuming',
      'etch.stopping',
      'etch.lifting',
      'etch.looking',
      'etch.strip-hold',
      'etch.strip-running',
      'etch.strip-resuming',
      'etch.strip-stopping',
      'etch.strip-lifting',
      'etch.strip-between',
      'neutralise.rinsing',
      'bath.hold',
      'bath.stored',
      'sheet',
    ]) {
      expect(reached, state).toContain(state);
    }
    expect(paths.length).toBeGreaterThan(100);
  });

  test('into power goes through every check of both holds', () => {
    for (const { state, steps } of paths) {
      if (!state.hasTag('powered')) continue;
      const seen = new Set(
        steps.flatMap(({ event }) => (event.type === 'check.answered' ? [event.check] : [])),
      );
      for (const check of [...checksOf('mixing', plan), ...checksOf('power', plan)]) {
        expect(seen, check.id).toContain(check.id);
      }
    }
  });
});

test('the machine waits for nothing and calls nobody, so that every path can be walked', () => {
  expect(() => createTestModel(procedure)).not.toThrow();
});
