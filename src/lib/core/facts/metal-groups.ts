import { isBitable, metals } from './metals.ts';
import type { MetalFamily } from './metals.ts';

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
