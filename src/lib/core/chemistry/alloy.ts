import { atomicWeights } from '../facts/elements.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { valences } from '../facts/electrode-facts.ts';
import type { Anion } from '../facts/salts/salt-facts.ts';

/*
 * ASTM G102 leaves out constituents below 1 %. The others are scaled to a sum of one; otherwise fine silver
 * would come out 0.1 % above 107.87 g/mol.
 */

export type Composition = Readonly<Partial<Record<ElementSymbol, number>>>;
export type Valences = Readonly<Partial<Record<ElementSymbol, number>>>;

/** Constituents below this mass % are left out, as in ASTM G102. */
export const TRACE = 1;

/** Mass fractions of the constituents from `TRACE` up, scaled to a sum of 1. */
export function countedFractions(massPercent: Composition): [ElementSymbol, number][] {
  const counted = (Object.entries(massPercent) as [ElementSymbol, number][]).filter(
    ([, share]) => share >= TRACE,
  );
  const total = counted.reduce((sum, [, share]) => sum + share, 0);
  return counted.map(([element, share]) => [element, share / total]);
}

/**
 * Equivalent weight of an alloy, 1/Σ(fᵢ·nᵢ/Mᵢ), constituents above 1 % (ASTM G102-89, equation for
 * alloy equivalent weight).
 * @param massPercent composition, mass %
 * @param electrons electrons per dissolved atom of each constituent that counts
 * @returns g per mole of electrons
 * @throws RangeError when a counted constituent has no valence
 */
export function equivalentWeight(massPercent: Composition, electrons: Valences): number {
  let molesOfElectrons = 0;
  for (const [element, fraction] of countedFractions(massPercent)) {
    const n = electrons[element];
    if (n === undefined)
      throw new RangeError(
        `no valence for ${element} found, one for each constituent above ${TRACE} % expected`,
      );
    molesOfElectrons += (fraction * n) / atomicWeights[element].value;
  }
  return 1 / molesOfElectrons;
}

/** Electrons per atom of each metal in a bath of this anion (Kinoshita et al. 1970 for copper). */
export const valencesIn = (anion: Anion): Valences =>
  Object.fromEntries(Object.entries(valences).map(([element, n]) => [element, n[anion]]));
