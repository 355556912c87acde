import { isBitable, metals } from './metals.ts';
import type { ElementSymbol } from './elements.ts';
import type { MetalFamily } from './metals.ts';

/** Used baths are kept in separate jars by the metal dissolved in them. */
export type MetalGroup = 'silver' | 'copper and brass' | 'nickel' | 'iron';

export const metalGroups: Readonly<Record<MetalFamily, MetalGroup>> = {
  silver: 'silver',
  copper: 'copper and brass',
  brass: 'copper and brass',
  bronze: 'copper and brass',
  nickel: 'nickel',
  iron: 'iron',
};

/** Metals that may be in the jar of a group because another piece of the group gave them off. */
export const sharedInJar: Readonly<Record<MetalGroup, readonly ElementSymbol[]>> = {
  silver: [],
  'copper and brass': ['Cu', 'Zn'],
  nickel: [],
  iron: [],
};

/** The group whose jar a metal's bath goes into; null for a metal that is not etched. */
export const metalGroupOf = (metal: string): MetalGroup | null =>
  isBitable(metal) ? metalGroups[metals[metal].family] : null;
