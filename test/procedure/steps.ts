import { createActor, initialTransition } from 'xstate';
import type { SnapshotFrom } from 'xstate';
import { parseJob } from '../../src/lib/core/plan/job-input.ts';
import { planJob } from '../../src/lib/core/plan/plan-job.ts';
import { checks, checksOf } from '../../src/lib/procedure/checks.ts';
import type { Check, HoldId } from '../../src/lib/procedure/checks.ts';
import type { ProcedureEvent } from '../../src/lib/procedure/events.ts';
import { checkBasisOf, noBasis } from '../../src/lib/procedure/check-basis.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';
import { procedure } from '../../src/lib/procedure/machine.ts';
import { amount, cuff, patched, pendant } from '../fixtures/jobs.ts';
import type { Raw } from '../fixtures/jobs.ts';

export type Snapshot = SnapshotFrom<typeof procedure>;

export const checkBasisFor = (raw: Raw): CheckBasis => {
  const parsed = parseJob(raw, { areaLater: true });
  if ('faults' in parsed) throw new Error(JSON.stringify(parsed.faults));
  return checkBasisOf(planJob(parsed.job));
};

/** Plans that a maker may change between: sound ones, one still without an area, one refused. */
export const checkBases: readonly CheckBasis[] = [
  checkBasisFor(pendant()),
  checkBasisFor(patched(pendant(), { 'piece.depth': amount(0.12, 'mm') })),
  checkBasisFor(patched(pendant(), { 'cathode.metal': 'stainless' })),
  checkBasisFor(patched(pendant(), { 'bath.salt': 'KNO3' })),
  checkBasisFor(patched(pendant(), { 'resist.kind': 'vinyl' })),
  checkBasisFor(cuff()),
  checkBasisFor(patched(pendant(), { 'piece.openArea': undefined })),
  checkBasisFor(patched(pendant(), { 'bath.salt': 'NaCl' })),
  checkBasisFor(patched(pendant(), { 'place.use': 'teaching' })),
];

export const start = (basis: CheckBasis): Snapshot => initialTransition(procedure, { basis })[0];

const ignored = (): void => undefined;
const idle = createActor(procedure, { input: { basis: noBasis } });
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
    input: { basis: snapshot.context.basis },
  }).getSnapshot();
}

/** The answer that lets the work go on. */
export const rightAnswer = (check: Check, { mostVolts, mostAmps }: CheckBasis): string | number =>
  check.kind === 'number'
    ? check.unit === 'A'
      ? mostAmps
      : mostVolts
    : check.kind === 'initials'
      ? 'AB CD'
      : (check.options.find(({ ok }) => ok)?.id ?? '');

/** Answers every check of a hold rightly. */
export function clear(snapshot: Snapshot, hold: HoldId, at: number): Snapshot {
  const { basis } = snapshot.context;
  return checksOf(hold, basis).reduce(
    (now, check) =>
      step(now, { type: 'check.answered', check: check.id, value: rightAnswer(check, basis), at }),
    snapshot,
  );
}

/** From a running bite to the lifted piece: stopped, seen off, every look before the lift answered. */
export function toLifted(running: Snapshot, at: number): Snapshot {
  const stopped = step(running, { type: 'stop.pressed', at });
  const off = step(stopped, { type: 'meter.read', reading: 'zero', at });
  return step(clear(off, 'lifting', at), { type: 'step.finished', at });
}

/** From the first screen to a running bite, honestly. */
export function toRunning(basis: CheckBasis, at = 1_000): Snapshot {
  const finish: ProcedureEvent = { type: 'step.finished', at };
  let now = start(basis);
  for (let planned = 0; planned < 5; planned += 1) now = step(now, finish);
  now = step(clear(now, 'mixing', at), finish);
  for (let prepared = 0; prepared < 3; prepared += 1) now = step(now, finish);
  return step(clear(now, 'power', at), { type: 'start.pressed', at });
}

export const checkIds = checks.map(({ id }) => id);
