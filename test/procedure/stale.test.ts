import { describe, expect, test } from 'vitest';
import { checkNamed, checks, checksOf, holdIds } from '../../src/lib/procedure/checks.ts';
import type { Check } from '../../src/lib/procedure/checks.ts';
import { ANSWER_TTL, changesSince, doesHoldStand, freshnessOf } from '../../src/lib/procedure/freshness.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';
import { amount, patched, pendant } from '../fixtures/jobs.ts';
import { clear, checkBasisFor, checkBases, pathOf, start, step, toLifted, toRunning } from './steps.ts';
import type { Snapshot } from './steps.ts';

const plan = checkBases[0] as CheckBasis;
const AT = 1_000;

/** A job in which every check has been answered rightly. */
const answered = (): Snapshot => holdIds.reduce((now, hold) => clear(now, hold, AT), start(plan));

const freshness = (snapshot: Snapshot, check: Check, at = AT) => freshnessOf(check, snapshot.context, at);

const listed = (check: Check, path: string): boolean =>
  check.inputs.some((named) => path === named || path.startsWith(`${named}.`)) ||
  check.figures.includes(path);

describe('a change makes exactly its dependents stale:', () => {
  const applying = holdIds.flatMap((hold) => checksOf(hold, plan));
  test.each(Object.keys(plan.inputs))('input %s', (path) => {
    const changed = { ...plan, inputs: { ...plan.inputs, [path]: '"another"' } };
    const now = step(answered(), { type: 'plan.changed', basis: changed });
    for (const check of applying) {
      expect(freshness(now, check) === 'changed', check.id).toBe(listed(check, path));
    }
    const back = step(now, { type: 'plan.changed', basis: plan });
    for (const check of applying) expect(freshness(back, check), check.id).toBe('fresh');
  });
  test.each(Object.keys(plan.figures))('figure %s', (id) => {
    const changed = { ...plan, figures: { ...plan.figures, [id]: 'another' } };
    const now = step(answered(), { type: 'plan.changed', basis: changed });
    for (const check of applying) {
      expect(freshness(now, check) === 'changed', check.id).toBe(listed(check, id));
    }
  });
});

test('an inch for 25.4 mm makes nothing stale', () => {
  const inches = checkBasisFor(
    patched(pendant(), { 'cathode.gap': amount(30 / 25.4, 'in'), 'piece.thickness': amount(1 / 25.4, 'in') }),
  );
  expect(inches).toEqual(plan);
});

test('a stale answer shows what it rested on and what stands there now', () => {
  const wider = { ...plan, inputs: { ...plan.inputs, 'cathode.gap': '0.04' } };
  const now = step(answered(), { type: 'plan.changed', basis: wider });
  const check = checks.find(({ id }) => id === 'between') as Check;
  const answer = now.context.answers[check.id];
  if (!answer) throw new Error('unanswered');
  const gap = { path: 'cathode.gap', before: '0.03', after: '0.04' };
  // the gap is no part of what this check lists unless it names it
  expect(changesSince(answer, check, wider)).toEqual(listed(check, 'cathode.gap') ? [gap] : []);
});

test('answers keep half an hour, and none survives a clock set back', () => {
  const now = answered();
  for (const check of checksOf('power', plan)) {
    expect(freshness(now, check, AT + ANSWER_TTL - 1), check.id).toBe('fresh');
    expect(freshness(now, check, AT + ANSWER_TTL), check.id).toBe('old');
    expect(freshness(now, check, AT - 1), check.id).toBe('old');
  }
  expect(ANSWER_TTL).toBe(30 * 60 * 1000);
});

describe('after a stop', () => {
  const looked = toLifted(toRunning(plan), 3_000);
  test('nothing is lifted, not even for a look, before the hold has been seen', () => {
    const off = step(step(toRunning(plan), { type: 'stop.pressed', at: 2_000 }), {
      type: 'meter.read',
      reading: 'zero',
      at: 2_000,
    });
    expect(pathOf(off)).toBe('etch.lifting');
    expect(off.hasTag('powered')).toBe(false);
    expect(pathOf(step(off, { type: 'step.finished', at: 2_000 }))).toBe('etch.lifting');
    expect(pathOf(step(off, { type: 'depth.judged', verdict: 'enough', at: 2_000 }))).toBe('etch.lifting');
    for (const check of checksOf('lifting', plan)) {
      const others = clear(off, 'lifting', 2_000);
      const { [check.id]: _, ...answers } = others.context.answers;
      const without = { ...others, context: { ...others.context, answers } } as Snapshot;
      expect(pathOf(step(without, { type: 'step.finished', at: 2_000 })), check.id).toBe('etch.lifting');
    }
    expect(pathOf(step(clear(off, 'lifting', 2_000), { type: 'step.finished', at: 2_000 }))).toBe(
      'etch.looking',
    );
  });
  test('only what a look can have changed is asked anew: three taps for the whole look', () => {
    const again = step(looked, { type: 'depth.judged', verdict: 'deeper', at: 4_000 });
    const running = step(clear(again, 'power', 4_000), { type: 'start.pressed', at: 4_000 });
    const off = step(step(running, { type: 'stop.pressed', at: 5_000 }), {
      type: 'meter.read',
      reading: 'zero',
      at: 5_000,
    });
    const toSay = (now: Snapshot, hold: 'lifting' | 'power') =>
      checksOf(hold, plan)
        .filter((check) => freshness(now, check, 5_000) !== 'fresh')
        .map(({ id }) => id);
    expect([...toSay(off, 'lifting'), ...toSay(off, 'power')]).toEqual(['hands', 'between', 'piece-clip']);
  });
  test('what was read off the knobs is not typed again', () => {
    const again = step(looked, { type: 'depth.judged', verdict: 'deeper', at: 4_000 });
    expect(pathOf(again)).toBe('etch.hold');
    for (const check of checksOf('power', plan)) {
      expect(freshness(again, check, 4_000), check.id).toBe(check.changedByStop ? 'spent' : 'fresh');
    }
  });
  test('Start stays locked until they are', () => {
    const again = step(looked, { type: 'depth.judged', verdict: 'deeper', at: 4_000 });
    expect(pathOf(step(again, { type: 'start.pressed', at: 4_000 }))).toBe('etch.hold');
    expect(pathOf(step(clear(again, 'power', 4_000), { type: 'start.pressed', at: 4_000 }))).toBe(
      'etch.running',
    );
  });
});

describe('under power', () => {
  test('an edit asks for stop at once, and the power stays on until the meter is read', () => {
    const edited = step(toRunning(plan), { type: 'plan.changed', basis: checkBases[3] as CheckBasis });
    expect(edited.context.stopWanted).toBe(true);
    expect(pathOf(edited)).toBe('etch.running');
  });
  test('the same plan again asks for nothing', () => {
    const same = step(toRunning(plan), { type: 'plan.changed', basis: { ...plan } });
    expect(same.context.stopWanted).toBe(false);
  });
  test('stop is taken in every powered state', () => {
    const stopping = step(toRunning(plan), { type: 'stop.pressed', at: 2_000 });
    expect(pathOf(stopping)).toBe('etch.stopping');
    expect(pathOf(step(stopping, { type: 'stop.pressed', at: 2_100 }))).toBe('etch.stopping');
    expect(stopping.hasTag('powered')).toBe(true);
  });
  test('only a meter at zero ends it', () => {
    const stopping = step(toRunning(plan), { type: 'stop.pressed', at: 2_000 });
    for (const reading of ['not-zero', 'not-sure'] as const) {
      expect(pathOf(step(stopping, { type: 'meter.read', reading, at: 2_100 }))).toBe('etch.stopping');
    }
    expect(pathOf(step(stopping, { type: 'meter.read', reading: 'zero', at: 2_100 }))).toBe('etch.lifting');
  });
  describe('a page that comes back', () => {
    const back = step(toRunning(plan), { type: 'job.restored', at: 9_000 });
    test('stays powered and asks whether the supply is still on', () => {
      expect(pathOf(back)).toBe('etch.resuming');
      expect(back.hasTag('powered')).toBe(true);
      expect(pathOf(step(back, { type: 'job.restored', at: 9_100 }))).toBe('etch.resuming');
    });
    test('goes on with the same run where it is', () => {
      const on = step(back, { type: 'supply.seen', says: 'on', at: 9_500 });
      expect(pathOf(on)).toBe('etch.running');
      expect(on.context.runs).toEqual([{ startedAt: 1_000, stoppedAt: null, offAt: null }]);
    });
    test.each(['off', 'not-sure'] as const)('leads to switching off where it is %s', (says) => {
      const off = step(back, { type: 'supply.seen', says, at: 9_500 });
      expect(pathOf(off)).toBe('etch.stopping');
      expect(off.context.runs).toEqual([{ startedAt: 1_000, stoppedAt: 9_500, offAt: null }]);
    });
    test('can be stopped at once', () => {
      expect(pathOf(step(back, { type: 'stop.pressed', at: 9_500 }))).toBe('etch.stopping');
    });
  });
});

test('what a file says was checked counts for nothing: power needs every look again', () => {
  const ready = toRunning(plan);
  for (const from of [ready, step(ready, { type: 'stop.pressed', at: 2_000 })]) {
    const opened = step(from, { type: 'job.restored', at: 9_000, isTakenIn: true });
    expect(pathOf(opened)).toBe('etch.stopping');
    expect(opened.context.answers).toEqual({});
    const seenOff = step(opened, { type: 'meter.read', reading: 'zero', at: 9_500 });
    const off = step(clear(seenOff, 'lifting', 9_500), { type: 'step.finished', at: 9_500 });
    const again = step(off, { type: 'depth.judged', verdict: 'deeper', at: 9_600 });
    expect(doesHoldStand('mixing', again.context)).toBe(false);
    expect(pathOf(step(again, { type: 'start.pressed', at: 9_600 }))).toBe('etch.hold');
  }
  // the same record, not from a file, still knows its mixed bath
  const own = step(ready, { type: 'job.restored', at: 9_000 });
  expect(doesHoldStand('mixing', own.context)).toBe(true);
});

test('a run of an older procedure opens at the question whether the supply is off, and nowhere else leads out', () => {
  const opened = step(start(plan), { type: 'job.restored', at: 9_000, poweredSince: 1_000 });
  expect(pathOf(opened)).toBe('etch.stopping');
  expect(opened.hasTag('powered')).toBe(true);
  expect(opened.context.runs).toEqual([{ startedAt: 1_000, stoppedAt: 9_000, offAt: null }]);
  const seenOff = step(opened, { type: 'meter.read', reading: 'zero', at: 9_500 });
  expect(pathOf(seenOff)).toBe('etch.lifting');
  const off = step(clear(seenOff, 'lifting', 9_500), { type: 'step.finished', at: 9_500 });
  // no answer came along, so that power needs every one of them
  const deeper = step(off, { type: 'depth.judged', verdict: 'deeper', at: 9_600 });
  expect(pathOf(step(deeper, { type: 'start.pressed', at: 9_600 }))).toBe('etch.hold');
});

test('another supply of the same kind is wired and looked at anew', () => {
  const other = { ...plan, inputs: { ...plan.inputs, 'workshop.supply': '"2"' } };
  const now = step(answered(), { type: 'plan.changed', basis: other });
  for (const id of ['supply-stands', 'piece-clip'] as const)
    expect(freshness(now, checkNamed(id)), id).toBe('changed');
});

test('whoever comes back to a run that nobody has seen end looks at the goggles anew before lifting', () => {
  const before = clear(start(plan), 'lifting', AT);
  const opened = step(before, { type: 'job.restored', at: 9_000, poweredSince: 1_000 });
  const seenOff = step(opened, { type: 'meter.read', reading: 'zero', at: 9_500 });
  expect(pathOf(step(seenOff, { type: 'step.finished', at: 9_500 }))).toBe('etch.lifting');
  expect(freshness(seenOff, checkNamed('goggles-lifting'), 9_500)).toBe('spent');
});

test('back from the power hold goes to the piece that was bitten, not past it', () => {
  let now = toLifted(toRunning(plan), 2_000);
  now = step(step(now, { type: 'depth.judged', verdict: 'deeper', at: 2_000 }), { type: 'step.back' });
  // it hangs in the bath again: the hold before the lift stands between
  expect(pathOf(now)).toBe('etch.lifting');
  now = step(now, { type: 'step.finished', at: 2_000 });
  expect(pathOf(now)).toBe('etch.looking');
  now = step(now, { type: 'depth.judged', verdict: 'enough', at: 2_000 });
  // a new mask has nothing to judge yet
  now = step(now, { type: 'bite.again', at: 2_000 });
  now = step(step(now, { type: 'step.finished', at: 2_000 }), { type: 'step.finished', at: 2_000 });
  expect(pathOf(now)).toBe('etch.hold');
  expect(pathOf(step(now, { type: 'step.back' }))).toBe('settings.knobs');
});

test('biting a stripped piece again asks every power check anew', () => {
  let now = toLifted(toRunning(plan), 2_000);
  now = step(now, { type: 'depth.judged', verdict: 'enough', at: 2_000 });
  now = step(now, { type: 'bite.again', at: 2_000 });
  expect(pathOf(now)).toBe('resist.masking');
  for (const check of checksOf('power', plan))
    expect(freshness(now, check, 2_000), check.id).toBe('unanswered');
});

test('a bath that has changed since it was mixed locks Start', () => {
  const running = toRunning(plan);
  const ready = toLifted(running, 2_000);
  const hold = step(ready, { type: 'depth.judged', verdict: 'deeper', at: 2_000 });
  const other = checkBases[3] as CheckBasis;
  const cleared = clear(step(hold, { type: 'plan.changed', basis: other }), 'power', 2_000);
  expect(pathOf(step(cleared, { type: 'start.pressed', at: 2_000 }))).toBe('etch.hold');
});

describe('in a class', () => {
  const taught = checkBasisFor(patched(pendant(), { 'place.use': 'teaching' }));
  const powerReady = (value: string): Snapshot => {
    const lifted = step(toLifted(toRunning(taught), 2_000), {
      type: 'depth.judged',
      verdict: 'deeper',
      at: 2_000,
    });
    const clearAgain = clear(lifted, 'power', 2_100);
    return step(clearAgain, { type: 'check.answered', check: 'initials-power', value, at: 2_100 });
  };
  test.each(['AB', 'AB AB', '', ' ', 'AB C1', 'ABCDE FG', 'ab cd', 'AB CD EF'])(
    '"%s" is not two people: the clock stays off',
    (value) => {
      expect(pathOf(step(powerReady(value), { type: 'start.pressed', at: 2_200 }))).toBe('etch.hold');
    },
  );
  test('two sets of initials start it, and the next bite asks for them again', () => {
    const running = step(powerReady('AB CD'), { type: 'start.pressed', at: 2_200 });
    expect(pathOf(running)).toBe('etch.running');
    const again = step(toLifted(running, 2_300), { type: 'depth.judged', verdict: 'deeper', at: 2_300 });
    expect(freshness(again, checkNamed('initials-power'), 2_400)).toBe('spent');
  });
});

describe('a test strip', () => {
  const wanted = (): Snapshot => {
    const finish = { type: 'step.finished', at: AT } as const;
    let now = start(plan);
    for (let planned = 0; planned < 5; planned += 1) now = step(now, finish);
    now = step(clear(now, 'mixing', AT), finish);
    now = step(step(now, finish), finish);
    return step(now, { type: 'strip.wanted' });
  };
  test('is powered only past every look, and again before each window', () => {
    expect(pathOf(step(wanted(), { type: 'strip.started', at: AT }))).toBe('etch.strip-hold');
    const running = step(clear(wanted(), 'power', AT), { type: 'strip.started', at: AT });
    expect(pathOf(running)).toBe('etch.strip-running');
    expect(running.hasTag('powered')).toBe(true);
    const stopped = step(running, { type: 'strip.stopped', at: 2_000 });
    expect(pathOf(step(stopped, { type: 'meter.read', reading: 'not-sure', at: 2_000 }))).toBe(
      'etch.strip-stopping',
    );
    const off = step(stopped, { type: 'meter.read', reading: 'zero', at: 2_500 });
    expect(pathOf(off)).toBe('etch.strip-lifting');
    const lifted = step(clear(off, 'lifting', 2_500), { type: 'step.finished', at: 2_500 });
    expect(pathOf(lifted)).toBe('etch.strip-between');
    const next = step(lifted, { type: 'step.finished', at: 2_600 });
    expect(pathOf(step(next, { type: 'strip.started', at: 2_600 }))).toBe('etch.strip-hold');
  });
  test('is no run of the piece, and leads back to its settings', () => {
    const running = step(clear(wanted(), 'power', AT), { type: 'strip.started', at: AT });
    const gone = step(running, { type: 'job.restored', at: 9_000 });
    expect(pathOf(gone)).toBe('etch.strip-resuming');
    const seen = step(gone, { type: 'supply.seen', says: 'off', at: 9_000 });
    const seenOff = step(seen, { type: 'meter.read', reading: 'zero', at: 9_500 });
    const off = step(clear(seenOff, 'lifting', 9_500), { type: 'step.finished', at: 9_500 });
    expect(off.context.runs).toEqual([]);
    expect(off.context.stripRuns).toEqual([{ startedAt: AT, stoppedAt: 9_000, offAt: 9_500 }]);
    const ended = step(off, { type: 'strip.ended' });
    expect(pathOf(ended)).toBe('settings.knobs');
    expect(step(ended, { type: 'strip.wanted' }).context.stripRuns).toEqual([]);
  });
});
