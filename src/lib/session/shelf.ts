import { metalGroupOf } from '../core/facts/metal-groups.ts';
import { bathNow } from '../notebook/bath-ledger.ts';
import type { BathState } from '../notebook/bath-ledger.ts';
import type { BathRecord } from '../notebook/records.ts';
import type { Draft } from './draft.ts';
import { openNotebook } from './jobs.ts';

/** A bath, and what it is now. */
export interface Shelved {
  readonly bath: BathRecord;
  readonly now: BathState;
}

/** Every bath of the notebook, the latest used first. */
export async function allBaths(): Promise<readonly Shelved[]> {
  const { records } = await (await openNotebook()).baths();
  return records
    .map((bath) => ({ bath, now: bathNow(bath) }))
    .toSorted((a, b) => b.now.lastUsedAt - a.now.lastUsedAt);
}

/** Baths on the shelf, parted by whether this metal may go into them: one jar for each metal group. */
export async function bathsFor(
  metal: string,
): Promise<{ readonly suitable: readonly Shelved[]; readonly others: number }> {
  const group = metalGroupOf(metal);
  const here = (await allBaths()).filter(({ now }) => now.where === 'shelf');
  const suitable = here.filter(({ bath }) => bath.metalGroup === group);
  return { suitable, others: here.length - suitable.length };
}

/** The answers of a job that takes this bath. */
export const answersFor = ({ bath, now }: Shelved): Partial<Draft> => ({
  'bath.from': 'shelf',
  'bath.record': bath.name,
  'bath.dissolved': JSON.stringify(now.dissolved),
  'bath.chargePassed': String(now.chargeAh),
  'bath.salt': bath.salt,
  'bath.strength': String(now.strength),
});

/** The answers of a job that mixes its own. */
export const newBath: Partial<Draft> = {
  'bath.from': 'new',
  'bath.record': '',
  'bath.dissolved': '',
  'bath.chargePassed': '',
};

/** The bath that a job has used and put on the shelf, to be taken again; a new one where there is none. */
export async function bathOfJob(id: string): Promise<Partial<Draft>> {
  const found = (await allBaths()).find(
    ({ bath, now }) =>
      now.where === 'shelf' && bath.events.some((event) => event.type === 'used' && event.job === id),
  );
  return found === undefined ? newBath : answersFor(found);
}
