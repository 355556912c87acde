import { metalGroupOf } from '../core/facts/metal-groups.ts';
import { bathNow } from '../notebook/bath-ledger.ts';
import type { BathState } from '../notebook/bath-ledger.ts';
import type { BathRecord } from '../notebook/records.ts';
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

/** Baths on the shelf that this metal may go into: one jar for each metal group. */
export async function suitableBaths(metal: string): Promise<readonly Shelved[]> {
  const group = metalGroupOf(metal);
  return (await allBaths()).filter(({ bath, now }) => now.where === 'shelf' && bath.metalGroup === group);
}
