import { metalGroupOf } from '../core/facts/metal-groups.ts';
import { bathNow } from '../notebook/bath-ledger.ts';
import type { BathState } from '../notebook/bath-ledger.ts';
import type { BathRecord } from '../notebook/records.ts';
import type { Draft } from './draft.ts';
import { openNotebook } from './jobs.ts';

/** A bath and its present state. */
export interface Shelved {
  readonly bath: BathRecord;
  readonly now: BathState;
}

/** Every bath of the notebook, the last used first. */
export async function allBaths(): Promise<readonly Shelved[]> {
  const { records } = await (await openNotebook()).baths();
  return records
    .map((bath) => ({ bath, now: bathNow(bath) }))
    .toSorted((a, b) => b.now.lastUsedAt - a.now.lastUsedAt);
}

/**
 * Baths on the shelf that this metal may use, and the number of others. Each metal group has its own jars.
 */
export async function bathsFor(
  metal: string,
): Promise<{ readonly suitable: readonly Shelved[]; readonly others: number }> {
  const group = metalGroupOf(metal);
  const here = (await allBaths()).filter(({ now }) => now.where === 'shelf');
  const suitable = here.filter(({ bath }) => bath.metalGroup === group);
  return { suitable, others: here.length - suitable.length };
}

/** The answers of a job that uses this bath. */
export const answersFor = ({ bath, now }: Shelved): Partial<Draft> => ({
  'bath.from': 'shelf',
  'bath.record': bath.name,
  'bath.dissolved': JSON.stringify(now.dissolved),
  'bath.chargePassed': String(now.chargeAh),
  'bath.salt': bath.salt,
  'bath.strength': String(now.strength),
});

/** The answers of a job with a new bath. */
export const newBath: Partial<Draft> = {
  'bath.from': 'new',
  'bath.record': '',
  'bath.dissolved': '',
  'bath.chargePassed': '',
};

/** Answers that choose the bath which a job used, if it is on the shelf; otherwise a new bath. */
export async function bathOfJob(id: string): Promise<Partial<Draft>> {
  const found = (await allBaths()).find(
    ({ bath, now }) =>
      now.where === 'shelf' && bath.events.some((event) => event.type === 'used' && event.job === id),
  );
  return found === undefined ? newBath : answersFor(found);
}
