import type { ShelfSalt } from '../facts/salts.ts';
import { waterDensity } from './water-density.laliberte2009.ts';

/** Share of the bought solid that is the anhydrous salt. */
export const anhydrousShare = ({ facts, hydrate }: ShelfSalt): number =>
  hydrate ? facts.molarMass.value / hydrate.molarMass.value : 1;

/**
 * Anhydrous mass fraction of what one gets by adding the bought solid to water. Water of
 * crystallisation counts as water.
 * @param strength g of the solid as bought per litre of water
 */
export const fractionAt = (salt: ShelfSalt, strength: number, celsius: number): number =>
  (anhydrousShare(salt) * strength) / (waterDensity(celsius) + strength);

/** The inverse of `fractionAt`; Infinity where the crystals alone are weaker. */
export function strengthAt(salt: ShelfSalt, fraction: number, celsius: number): number {
  const share = anhydrousShare(salt);
  return fraction >= share ? Infinity : (fraction * waterDensity(celsius)) / (share - fraction);
}
