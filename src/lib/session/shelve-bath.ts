import type { Plan } from '../core/plan/plan.ts';
import { recordVersion } from '../notebook/records.ts';
import type { BathRecord, JobRecord } from '../notebook/records.ts';
import { chargeSoFar } from './revise.ts';
import { notebook } from './bench.ts';
import { newId } from './new-id.ts';
import { metalGroupOf } from './shelf.ts';
import { targetOf } from './target.ts';
import type { Run } from '../procedure/machine.ts';

const ofMetal = 'dissolved_metal.';

/** Metal in the bath after this job, mg/L by element, scaled to the charge that really passed. */
function heldAfter(plan: Plan, share: number): Record<string, number> {
  const before = plan.job.bath.dissolved;
  return Object.fromEntries(
    Object.entries(plan.figures)
      .filter(([id]) => id.startsWith(ofMetal))
      .map(([id, figure]) => {
        const element = id.slice(ofMetal.length) as keyof typeof before;
        const held = (before[element] ?? 0) * 1e3;
        return [element, Number((held + (figure.value - held) * share).toPrecision(4))];
      }),
  );
}

/**
 * The bath as it goes back on the shelf, or is handed over.
 * @param baths what stands on the shelf
 * @param chargeAh charge that passed in this job
 */
export function bathAfter(
  plan: Plan,
  baths: readonly BathRecord[],
  chargeAh: number,
  where: BathRecord['where'],
  now: number,
  id: string,
): BathRecord {
  const { bath, piece } = plan.job;
  const known = baths.find(({ name }) => name === bath.record);
  const group = metalGroupOf(piece.metal) ?? 'unknown';
  const planned = plan.figures.charge?.value ?? 0;
  const alike = baths.filter(({ metalGroup }) => metalGroup === group).length;
  return {
    version: recordVersion,
    id: known?.id ?? id,
    name: known?.name ?? `${group.toUpperCase()} ${String(alike + 1)}`,
    salt: bath.salt,
    strength: bath.strength,
    water: bath.water,
    madeAt: known?.madeAt ?? now,
    lastUsedAt: now,
    chargeAh: (known?.chargeAh ?? 0) + chargeAh,
    dissolved: heldAfter(plan, planned > 0 ? chargeAh / planned : 0),
    metalGroup: group,
    where,
  };
}

/** Puts the job's bath into the notebook, once: doing it again for the same job changes nothing but its place. */
export async function shelveBath(
  record: JobRecord,
  runs: readonly Run[],
  where: BathRecord['where'],
  now: number,
): Promise<BathRecord | null> {
  const plan = record.planAtStart as Plan | null;
  const target = targetOf(plan);
  if (!plan || !target) return null;
  const book = await notebook();
  const { records } = await book.baths();
  const key = `bath-of-${record.id}`;
  const done = await book.meta(key);
  const again = records.find(({ id }) => id === done);
  const bath = again
    ? { ...again, where }
    : bathAfter(plan, records, chargeSoFar(runs, record.readings, target, now), where, now, newId());
  await book.saveBath(bath);
  await book.saveMeta(key, bath.id);
  return bath;
}
