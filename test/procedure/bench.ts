import { createActor, initialTransition } from 'xstate';
import type { SnapshotFrom } from 'xstate';
import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import { checks, checksOf } from '../../src/lib/procedure/checks.ts';
import type { Check, HoldId } from '../../src/lib/procedure/checks.ts';
import type { ProcedureEvent } from '../../src/lib/procedure/events.ts';
import { foundationOf, nothingYet } from '../../src/lib/procedure/foundation.ts';
import type { Foundation } from '../../src/lib/procedure/foundation.ts';
import { procedure } from '../../src/lib/procedure/machine.ts';
import { amount, cuff, patched, pendant } from '../fixtures/jobs.ts';
import type { Raw } from '../fixtures/jobs.ts';

export type Snapshot = SnapshotFrom<typeof procedure>;

export const foundationFor = (raw: Raw): Foundation => {
  const parsed = parseJob(raw, { areaLater: true });
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return foundationOf(planJob(parsed.job));
};

/** Plans that a maker may change between: sound ones, one still without an area, one refused. */
export const foundations: readonly Foundation[] = [
  foundationFor(pendant()),
  foundationFor(patched(pendant(), { 'piece.depth': amount(0.12, 'mm') })),
  foundationFor(patched(pendant(), { 'cathode.metal': 'stainless' })),
  foundationFor(patched(pendant(), { 'bath.salt': 'KNO3' })),
  foundationFor(patched(pendant(), { 'resist.kind': 'vinyl' })),
  foundationFor(cuff()),
  foundationFor(patched(pendant(), { 'piece.openArea': undefined })),
  foundationFor(patched(pendant(), { 'bath.salt': 'NaCl' })),
  foundationFor(patched(pendant(), { 'place.use': 'teaching' })),
];

export const start = (foundation: Foundation): Snapshot => initialTransition(procedure, { foundation })[0];

const ignored = (): void => undefined;
const idle = createActor(procedure, { input: { foundation: nothingYet } });
/** Made once: `transition` makes an actor for every step, which is half of what a walk takes. */
const inert: Parameters<typeof procedure.transition>[2] = {
  self: idle,
  system: idle.system,
  id: '',
  sessionId: '',
  defer: ignored,
  logger: ignored,
  stopChild: ignored,
  emit: ignored,
  actionExecutor: ignored,
};

export const step = (snapshot: Snapshot, event: ProcedureEvent): Snapshot =>
  procedure.transition(snapshot, event, inert);

export const pathOf = ({ value }: Snapshot): string =>
  typeof value === 'string'
    ? value
    : Object.entries(value)
        .map(([state, inner]) => `${state}.${inner as string}`)
        .join();

/** A snapshot as storage gives it back. */
export function stored(snapshot: Snapshot): Snapshot {
  const plain = JSON.parse(JSON.stringify(procedure.getPersistedSnapshot(snapshot))) as never;
  return createActor(procedure, {
    snapshot: plain,
    input: { foundation: snapshot.context.foundation },
  }).getSnapshot();
}

/** The answer that lets the work go on. */
export const rightAnswer = (check: Check, { mostVolts }: Foundation): string | number =>
  check.kind === 'number'
    ? mostVolts
    : check.kind === 'initials'
      ? 'AB CD'
      : (check.options.find(({ ok }) => ok)?.id ?? '');

/** Answers every check of a hold rightly. */
export function clear(snapshot: Snapshot, hold: HoldId, at: number): Snapshot {
  const { foundation } = snapshot.context;
  return checksOf(hold, foundation).reduce(
    (now, check) =>
      step(now, { type: 'check.answered', check: check.id, value: rightAnswer(check, foundation), at }),
    snapshot,
  );
}

/** From the first screen to a running bite, honestly. */
export function toRunning(foundation: Foundation, at = 1_000): Snapshot {
  const finish: ProcedureEvent = { type: 'step.finished', at };
  let now = start(foundation);
  now = step(step(step(now, finish), finish), finish);
  now = step(clear(now, 'mixing', at), finish);
  now = step(step(step(now, finish), finish), finish);
  return step(clear(now, 'power', at), { type: 'start.pressed', at });
}

export const checkIds = checks.map(({ id }) => id);
