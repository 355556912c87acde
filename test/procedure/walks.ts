import { checksOf } from '../../src/lib/procedure/checks.ts';
import type { HoldId } from '../../src/lib/procedure/checks.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';
import type { ProcedureEvent } from '../../src/lib/procedure/events.ts';
import { stepIds } from '../../src/lib/core/rules/rule.ts';
import { Oracle } from './oracle.ts';
import { checkIds, checkBases, pathOf, rightAnswer, start, step, stored } from './steps.ts';
import type { Snapshot } from './steps.ts';

/** mulberry32: a small generator whose whole state is its seed. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export interface Tally {
  readonly reached: Record<string, number>;
  runs: number;
  edits: number;
  reloads: number;
  clockBack: number;
}

/** Each state in which current may flow, and where stopping it leads. */
const stoppingOf: Readonly<Record<string, string>> = {
  'etch.running': 'etch.stopping',
  'etch.resuming': 'etch.stopping',
  'etch.strip-resuming': 'etch.strip-stopping',
  'etch.stopping': 'etch.stopping',
  'etch.strip-running': 'etch.strip-stopping',
  'etch.strip-stopping': 'etch.strip-stopping',
};
const powered = new Set(Object.keys(stoppingOf));
const started: Readonly<Record<string, string>> = {
  'etch.running': 'start.pressed',
  'etch.strip-running': 'strip.started',
};

/** Where a page that came back asks, and where its "on" leads. */
const resumed: Readonly<Record<string, string>> = {
  'etch.resuming': 'etch.running',
  'etch.strip-resuming': 'etch.strip-running',
};
/** The hold before every lift, and where it leads. */
const lifted: Readonly<Record<string, string>> = {
  'etch.lifting': 'etch.looking',
  'etch.strip-lifting': 'etch.strip-between',
};
/** A piece that is out of the bath may be judged again from here. */
const canLookBack = new Set(['neutralise.rinsing']);

/** What a maker, a browser or bad luck may do next; most of it leads onwards. */
function nextEvent(snapshot: Snapshot, at: number, random: () => number): ProcedureEvent {
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  const { basis } = snapshot.context;
  const path = pathOf(snapshot);
  const dice = random();
  if (dice < 0.03) return { type: 'plan.changed', basis: pick(checkBases) };
  if (dice < 0.04) return { type: 'job.restored', at };
  if (dice < 0.045) return { type: 'job.restored', at, isTakenIn: true };
  if (dice < 0.05) return { type: 'job.restored', at, poweredSince: at - 60_000 };
  if (dice < 0.07) return { type: 'step.chosen', step: pick(stepIds) };
  if (dice < 0.09)
    return pick([
      { type: 'step.back' },
      { type: 'stop.pressed', at },
      { type: 'start.pressed', at },
      { type: 'bite.again', at },
      { type: 'strip.wanted' },
      { type: 'strip.started', at },
      { type: 'strip.stopped', at },
      { type: 'strip.ended' },
    ] as const);
  if (dice < 0.12)
    return {
      type: 'check.answered',
      check: pick(checkIds),
      value: pick(['plus', 'minus', 'zero', 7, 12, '', 'AB AB', 'AB']),
      at,
    };
  if (path === 'etch.running') return { type: 'stop.pressed', at };
  if (path === 'etch.strip-running') return { type: 'strip.stopped', at };
  if (path === 'settings.knobs' && random() < 0.3) return { type: 'strip.wanted' };
  if (path === 'etch.strip-between' && random() < 0.3) return { type: 'strip.ended' };
  if (path === 'etch.resuming' || path === 'etch.strip-resuming')
    return { type: 'supply.seen', says: pick(['on', 'off', 'not-sure']), at };
  if (path === 'etch.stopping' || path === 'etch.strip-stopping')
    return { type: 'meter.read', reading: pick(['zero', 'not-zero', 'not-sure']), at };
  if (path === 'etch.looking')
    return { type: 'depth.judged', verdict: pick(['deeper', 'enough', 'not-sure']), at };
  const hold = {
    'electrolyte.hold': 'mixing',
    'etch.hold': 'power',
    'etch.strip-hold': 'power',
    'etch.lifting': 'lifting',
    'etch.strip-lifting': 'lifting',
    'bath.hold': 'storing',
  }[path];
  if (hold !== undefined && random() < 0.93) {
    const open = checksOf(hold as HoldId, basis);
    const unanswered = open.find(
      ({ id, changedByStop }) =>
        (snapshot.context.answers[id]?.seq ?? 0) <=
        (changedByStop
          ? Math.max(snapshot.context.spent, snapshot.context.spentByStop)
          : snapshot.context.spent),
    );
    const check = unanswered ?? (random() < 0.5 ? pick(open) : undefined);
    if (check) return { type: 'check.answered', check: check.id, value: rightAnswer(check, basis), at };
  }
  if (path === 'etch.hold') return { type: 'start.pressed', at };
  if (path === 'etch.strip-hold') return { type: 'strip.started', at };
  if (path === 'neutralise.rinsing' && random() < 0.2) return { type: 'bite.again', at };
  return { type: 'step.finished', at };
}

interface Checkpoint {
  readonly snapshot: Snapshot;
  /** events so far, with the state each was taken in and the one it led to */
  readonly past: readonly (readonly [ProcedureEvent, string, string])[];
}

const EPOCH = 1_700_000_000_000;

/** Every state along an honest job, so that walks may set out from any of them. */
function checkpointsOf(basis: CheckBasis): Checkpoint[] {
  const points: Checkpoint[] = [{ snapshot: start(basis), past: [] }];
  const take = (event: ProcedureEvent): void => {
    const last = points.at(-1) as Checkpoint;
    const snapshot = step(last.snapshot, event);
    points.push({ snapshot, past: [...last.past, [event, pathOf(last.snapshot), pathOf(snapshot)]] });
  };
  const at = EPOCH;
  const finish = { type: 'step.finished', at } as const;
  const clearAll = (hold: HoldId): void => {
    for (const check of checksOf(hold, basis)) {
      take({ type: 'check.answered', check: check.id, value: rightAnswer(check, basis), at });
    }
  };
  for (let i = 0; i < 5; i += 1) take(finish);
  clearAll('mixing');
  for (let i = 0; i < 4; i += 1) take(finish);
  clearAll('power');
  take({ type: 'start.pressed', at });
  take({ type: 'stop.pressed', at });
  take({ type: 'meter.read', reading: 'zero', at });
  clearAll('lifting');
  take(finish);
  take({ type: 'depth.judged', verdict: 'enough', at });
  take(finish);
  clearAll('storing');
  take(finish);
  return points;
}

const checkpoints = checkBases.filter(({ mayPower }) => mayPower).flatMap(checkpointsOf);

function assert(holds: boolean, what: string, note: () => string): void {
  if (!holds) throw new Error(`${what}: ${note()}`);
}

/** Walks one random job from a random checkpoint and holds every step against the oracle. */
export function walkOnce(seed: number, tally: Tally): void {
  const random = randomFrom(seed);
  const { snapshot, past } = checkpoints[Math.floor(random() * checkpoints.length)] as Checkpoint;
  let now = snapshot;
  const oracle = new Oracle(snapshot.context.basis);
  for (const [event, path, led] of past) oracle.take(event, path, led);
  let at = EPOCH;
  let ran = false;
  const length = 8 + Math.floor(random() * 24);
  for (let i = 0; i < length; i += 1) {
    const jump = random();
    if (jump < 0.01) tally.clockBack += 1;
    at += jump < 0.01 ? -600_000 : jump > 0.98 ? 2_000_000 : Math.floor(random() * 20_000);
    if (random() < 0.01) {
      now = stored(now);
      tally.reloads += 1;
    }
    const event = nextEvent(now, at, random);
    const before = pathOf(now);
    now = step(now, event);
    const after = pathOf(now);
    const note = (): string => `seed ${seed}, step ${i}: ${event.type} in ${before} led to ${after}`;
    if (event.type === 'plan.changed' && powered.has(before)) tally.edits += 1;

    const clear = (hold: HoldId): void => {
      const blockers = oracle.blockers(hold, at);
      assert(blockers.length === 0, blockers.join('; '), note);
    };
    const starter = started[after];
    const isBackOn = resumed[before] === after && event.type === 'supply.seen' && event.says === 'on';
    if (starter !== undefined && before !== after && !isBackOn) {
      assert(event.type === starter, 'only Start starts', note);
      assert(oracle.basis.mayPower, 'a plan that may not be powered', note);
      clear('power');
      assert(
        oracle.broken('mixing').length === 0,
        `mixed on other grounds: ${oracle.broken('mixing').join()}`,
        note,
      );
      ran = true;
    }
    if (after === 'electrolyte.mixing' && before === 'electrolyte.hold') clear('mixing');
    const isLifted = lifted[before] === after;
    assert(
      after !== 'etch.looking' || before === after || isLifted || canLookBack.has(before),
      'no look without the hold before it',
      note,
    );
    if (isLifted) clear('lifting');
    if (after === 'bath.stored' && before === 'bath.hold') clear('storing');
    if (powered.has(before)) {
      const stop = before.startsWith('etch.strip') ? 'strip.stopped' : 'stop.pressed';
      const isForeign = event.type === 'job.restored' && event.isTakenIn === true;
      const isOff = event.type === 'supply.seen' && event.says !== 'on' && before in resumed;
      const isRunning = before in started || before in resumed;
      assert(
        !(event.type === stop || (isRunning && (isForeign || isOff))) || after === stoppingOf[before],
        'stop is taken in every powered state',
        note,
      );
      const zero = event.type === 'meter.read' && event.reading === 'zero';
      assert(
        powered.has(after) || (stoppingOf[before] === before && zero),
        'only a supply seen off ends power',
        note,
      );
      assert(stoppingOf[before] !== before || started[after] === undefined, 'no way back into power', note);
      if (event.type === 'job.restored' && before in started && !isForeign)
        assert(resumed[after] === before, 'a page that comes back asks whether it is still on', note);
    }
    assert(now.hasTag('powered') === powered.has(after), 'the tag tells', note);
    assert(now.status === 'active', 'the machine lives', note);
    oracle.take(event, before, after);
    tally.reached[after] = (tally.reached[after] ?? 0) + 1;
  }
  if (ran) tally.runs += 1;
}

/** Walks many, each of a seed of its own from the first one on; a failure names its seed. */
export function walkMany(count: number, first: number): Tally {
  const tally: Tally = { reached: {}, runs: 0, edits: 0, reloads: 0, clockBack: 0 };
  for (let i = 0; i < count; i += 1) walkOnce(first + i, tally);
  return tally;
}
