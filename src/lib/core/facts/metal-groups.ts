import { isBitable, metals } from './metals.ts';
import type { ElementSymbol } from './elements.ts';
import type { MetalFamily } from './metals.ts';

/** Jars are kept apart by what is dissolved in them. */
export type MetalGroup = 'silver' | 'copper and brass' | 'nickel' | 'iron';

export const metalGroups: Readonly<Record<MetalFamily, MetalGroup>> = {
  silver: 'silver',
  copper: 'copper and brass',
  brass: 'copper and brass',
  bronze: 'copper and brass',
  nickel: 'nickel',
  iron: 'iron',
};

/** Metals that every piece of a group may find in its jar, because another piece of the group shed them. */
export const sharedInJar: Readonly<Record<MetalGroup, readonly ElementSymbol[]>> = {
  silver: [],
  'copper and brass': ['Cu', 'Zn'],
  nickel: [],
  iron: [],
};

/** Which jar a metal's bath belongs in; null for a metal that is not etched. */
export const metalGroupOf = (metal: string): MetalGroup | null =>
  isBitable(metal) ? metalGroups[metals[metal].family] : null;
