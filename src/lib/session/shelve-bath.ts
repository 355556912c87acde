import type { Plan } from '../core/plan/plan.ts';
import { bathNow } from '../notebook/bath-ledger.ts';
import type { BathState } from '../notebook/bath-ledger.ts';
import { bathVersion } from '../notebook/records.ts';
import type { BathEvent, BathRecord, JobRecord } from '../notebook/records.ts';
import type { Run } from '../core/run/run.ts';
import { notebook } from './open.ts';
import { newId } from './new-id.ts';
import { soFar } from './run-log.ts';
import { metalGroupOf } from '../core/facts/metal-groups.ts';

const ofMetal = 'dissolved_metal.';
const PER_LITRE = 1e3;

/**
 * Metal that a charge adds to the bath, mg/L by element, in proportion to the plan's own charge. Nothing is
 * subtracted for what settles on the plate.
 */
export function metalTaken(plan: Plan, chargeAh: number): Readonly<Record<string, number>> {
  const planned = plan.figures.charge?.value ?? 0;
  if (!(planned > 0)) return {};
  const before: Readonly<Record<string, number>> = plan.job.bath.dissolved;
  return Object.fromEntries(
    Object.entries(plan.figures)
      .filter(([id]) => id.startsWith(ofMetal))
      .map(([id, { value }]): [string, number] => {
        const element = id.slice(ofMetal.length);
        return [element, ((value - (before[element] ?? 0) * PER_LITRE) * chargeAh) / planned];
      })
      .filter(([, taken]) => taken !== 0),
  );
}

/** The next free name in a metal group, such as SILVER 2. Baths that were handed over keep their names. */
export function nextName(group: string, baths: readonly BathRecord[]): string {
  const prefix = `${group.toUpperCase()} `;
  const taken = baths.flatMap(({ name }) => {
    const number = name.startsWith(prefix) ? Number(name.slice(prefix.length)) : NaN;
    return Number.isInteger(number) ? [number] : [];
  });
  return `${prefix}${String(Math.max(0, ...taken) + 1)}`;
}

/** What a job does to its bath. */
export interface BathUse {
  readonly job: string;
  readonly plan: Plan;
  /** charge passed in all runs of this job */
  readonly chargeAh: number;
  readonly where: BathState['where'];
  readonly now: number;
}

const masses = (perLitre: Readonly<Record<string, number>>, volumeMl: number): Record<string, number> =>
  Object.fromEntries(
    Object.entries(perLitre).map(([element, held]) => [
      element,
      Number(((held * volumeMl) / PER_LITRE).toPrecision(6)),
    ]),
  );

/** A record for a bath without one: newly mixed by this job, or from elsewhere. */
function firstRecord(
  { plan, now }: BathUse,
  fresh: { readonly id: string; readonly name: string },
): BathRecord {
  const { bath, piece } = plan.job;
  const volumeMl = Math.round(plan.figures.bath_volume?.value ?? 0);
  const held = Object.fromEntries(Object.entries(bath.dissolved).map(([e, value]) => [e, value * PER_LITRE]));
  return {
    version: bathVersion,
    id: fresh.id,
    name: bath.record ?? fresh.name,
    salt: bath.salt,
    water: bath.water,
    metalGroup: metalGroupOf(piece.metal) ?? 'unknown',
    events: [
      {
        type: 'mixed',
        at: now,
        strength: bath.strength,
        waterMl: Math.round(plan.figures.water_volume?.value ?? volumeMl),
        volumeMl,
        // for a bath from elsewhere: what it held before, as typed
        heldMg: masses(held, volumeMl),
      },
    ],
  };
}

/**
 * The bath after a job, back on the shelf or handed over. A later event of the same job replaces its earlier
 * one, because a piece may be etched again, or the maker may decide otherwise.
 * @param known its record, when it has one
 * @param fresh id and name for a bath without one
 */
export function bathAfter(
  draw: BathUse,
  known: BathRecord | undefined,
  fresh: { readonly id: string; readonly name: string },
): BathRecord {
  const { job, plan, chargeAh, where, now } = draw;
  const bath = known ?? firstRecord(draw, fresh);
  const volumeMl = plan.figures.bath_volume?.value ?? bathNow(bath).volumeMl;
  const used: BathEvent = {
    type: 'used',
    at: now,
    job,
    chargeAh,
    tookMg: masses(metalTaken(plan, chargeAh), volumeMl),
  };
  const gone: readonly BathEvent[] =
    bathNow(bath).where === where
      ? []
      : [where === 'shelf' ? { type: 'kept', at: now } : { type: 'handed-over', at: now, to: '' }];
  return { ...bath, events: [...bath.events, used, ...gone] };
}

const hasUsed = (bath: BathRecord, job: string): boolean =>
  bath.events.some((event) => event.type === 'used' && event.job === job);

/** Saves the job's bath in the notebook. */
export async function shelveBath(
  record: JobRecord,
  runs: readonly Run[],
  where: BathState['where'],
  now: number,
): Promise<BathRecord | null> {
  const { plan, chargeAh } = soFar(record, runs, null, now);
  if (!plan) return null;
  const book = await notebook();
  const { records } = await book.baths();
  const known =
    records.find((bath) => hasUsed(bath, record.id)) ??
    records.find(({ name }) => name === plan.job.bath.record);
  const group = metalGroupOf(plan.job.piece.metal) ?? 'unknown';
  const bath = bathAfter({ job: record.id, plan, chargeAh, where, now }, known, {
    id: newId(),
    name: nextName(group, records),
  });
  await book.saveBath(bath);
  return bath;
}
