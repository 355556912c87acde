import type { ShelfSalt } from '../facts/salts.ts';
import { waterDensity } from './water-density.laliberte2009.ts';

/** Mass share of anhydrous salt in the solid as bought. */
export const anhydrousShare = ({ facts, hydrate }: ShelfSalt): number =>
  hydrate ? facts.molarMass.value / hydrate.molarMass.value : 1;

/**
 * Anhydrous mass fraction after adding the bought solid to water. Water of crystallisation counts as water.
 * @param strength g of the solid as bought per litre of water
 */
export const fractionAt = (salt: ShelfSalt, strength: number, celsius: number): number =>
  (anhydrousShare(salt) * strength) / (waterDensity(celsius) + strength);

/** The inverse of `fractionAt`; Infinity for a fraction that even the pure crystals do not reach. */
export function strengthAt(salt: ShelfSalt, fraction: number, celsius: number): number {
  const share = anhydrousShare(salt);
  return fraction >= share ? Infinity : (fraction * waterDensity(celsius)) / (share - fraction);
}
