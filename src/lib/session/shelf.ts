import { isBitable, metals } from '../core/facts/metals.ts';
import type { BathRecord } from '../notebook/records.ts';
import { notebook } from './bench.ts';

/** Which jar a metal's bath belongs in. */
export const metalGroupOf = (metal: string): 'silver' | 'copper and brass' | null =>
  !isBitable(metal) ? null : metals[metal].family === 'silver' ? 'silver' : 'copper and brass';

/** Baths on the shelf that this metal may go into: one jar for each metal group. */
export async function suitableBaths(metal: string): Promise<readonly BathRecord[]> {
  const group = metalGroupOf(metal);
  const { records } = await (await notebook()).baths();
  return records.filter((bath) => bath.where === 'shelf' && bath.metalGroup === group);
}
