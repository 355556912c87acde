import { isBitable, metals } from '../core/facts/metals.ts';
import type { MetalFamily } from '../core/facts/metals.ts';
import type { BathRecord } from '../notebook/records.ts';
import { notebook } from './bench.ts';

/** Jars are kept apart by what is dissolved in them. */
export type MetalGroup = 'silver' | 'copper and brass' | 'nickel' | 'iron';

const groups: Readonly<Record<MetalFamily, MetalGroup>> = {
  silver: 'silver',
  copper: 'copper and brass',
  brass: 'copper and brass',
  bronze: 'copper and brass',
  nickel: 'nickel',
  iron: 'iron',
};

/** Which jar a metal's bath belongs in; null for a metal that is not etched. */
export const metalGroupOf = (metal: string): MetalGroup | null =>
  isBitable(metal) ? groups[metals[metal].family] : null;

/** Baths on the shelf that this metal may go into: one jar for each metal group. */
export async function suitableBaths(metal: string): Promise<readonly BathRecord[]> {
  const group = metalGroupOf(metal);
  const { records } = await (await notebook()).baths();
  return records.filter((bath) => bath.where === 'shelf' && bath.metalGroup === group);
}
