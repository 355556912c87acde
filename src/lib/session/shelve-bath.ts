import type { Plan } from '../core/plan/plan.ts';
import { recordVersion } from '../notebook/records.ts';
import type { BathRecord, JobRecord } from '../notebook/records.ts';
import type { Run } from '../procedure/machine.ts';
import { notebook } from './bench.ts';
import { newId } from './new-id.ts';
import { soFar } from './run-log.ts';
import { metalGroupOf } from './shelf.ts';

const ofMetal = 'dissolved_metal.';
const PER_LITRE = 1e3;

/**
 * Metal that a charge takes into the bath, mg/L by element: what the plan foresees for its own charge, in
 * proportion. Nothing is taken off for what settles on the plate.
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

/** The next free name of a metal group, such as SILVER 2. Baths handed over keep theirs. */
export function nextName(group: string, baths: readonly BathRecord[]): string {
  const prefix = `${group.toUpperCase()} `;
  const taken = baths.flatMap(({ name }) => {
    const number = name.startsWith(prefix) ? Number(name.slice(prefix.length)) : NaN;
    return Number.isInteger(number) ? [number] : [];
  });
  return `${prefix}${String(Math.max(0, ...taken) + 1)}`;
}

const sum = (
  held: Readonly<Record<string, number>>,
  taken: Readonly<Record<string, number>>,
): Record<string, number> =>
  Object.fromEntries(
    [...new Set([...Object.keys(held), ...Object.keys(taken)])].map((element) => [
      element,
      Number(((held[element] ?? 0) + (taken[element] ?? 0)).toPrecision(6)),
    ]),
  );

/** What a job does to its bath. */
export interface Draw {
  readonly plan: Plan;
  /** charge that this job has passed and the bath's record does not hold yet */
  readonly chargeAh: number;
  readonly where: BathRecord['where'];
  readonly now: number;
}

/**
 * The bath as it goes back on the shelf, or is handed over.
 * @param known its record, when it has one
 * @param fresh id and name of a bath without one
 */
export function bathAfter(
  { plan, chargeAh, where, now }: Draw,
  known: BathRecord | undefined,
  fresh: { readonly id: string; readonly name: string },
): BathRecord {
  const { bath, piece } = plan.job;
  const volumeMl = plan.figures.bath_volume?.value;
  const base: BathRecord = known ?? {
    version: recordVersion,
    id: fresh.id,
    name: bath.record ?? fresh.name,
    salt: bath.salt,
    strength: bath.strength,
    water: bath.water,
    madeAt: now,
    lastUsedAt: now,
    chargeAh: 0,
    // one from elsewhere, typed in: what it held before belongs to it
    dissolved: sum(
      {},
      Object.fromEntries(Object.entries(bath.dissolved).map(([e, v]) => [e, v * PER_LITRE])),
    ),
    metalGroup: metalGroupOf(piece.metal) ?? 'unknown',
    where,
    ...(volumeMl === undefined ? {} : { volumeMl: Math.round(volumeMl) }),
  };
  return {
    ...base,
    lastUsedAt: now,
    chargeAh: base.chargeAh + chargeAh,
    dissolved: sum(base.dissolved, metalTaken(plan, chargeAh)),
    where,
  };
}

/** What the notebook remembers of a job's bath. */
interface Drawn {
  readonly bath: string;
  readonly chargeAh: number;
}

const isDrawn = (value: unknown): value is Drawn =>
  typeof value === 'object' && value !== null && 'bath' in value && 'chargeAh' in value;

/**
 * Puts the job's bath into the notebook. Done again, it adds only what has passed since: a piece may be
 * bitten once more, and a maker may choose otherwise.
 */
export async function shelveBath(
  record: JobRecord,
  runs: readonly Run[],
  where: BathRecord['where'],
  now: number,
): Promise<BathRecord | null> {
  const { plan, chargeAh } = soFar(record, runs, null, now);
  if (!plan) return null;
  const book = await notebook();
  const { records } = await book.baths();
  const key = `bath-of-${record.id}`;
  const meta = await book.meta(key);
  const drawn = isDrawn(meta) ? meta : null;
  const known = records.find(({ id, name }) => (drawn ? id === drawn.bath : name === plan.job.bath.record));
  const already = known && drawn ? drawn.chargeAh : 0;
  const group = metalGroupOf(plan.job.piece.metal) ?? 'unknown';
  const bath = bathAfter({ plan, chargeAh: chargeAh - already, where, now }, known, {
    id: newId(),
    name: nextName(group, records),
  });
  await book.saveBath(bath);
  await book.saveMeta(key, { bath: bath.id, chargeAh } satisfies Drawn);
  return bath;
}
