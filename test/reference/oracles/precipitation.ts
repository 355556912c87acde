import { atomicWeights } from '../../../src/lib/core/facts/elements.ts';
import { complexes } from './complexes.ts';
import { solubilityProducts } from './solubility-products.ts';
import type { Hydroxide } from './hydroxides.ts';

/** A ligand left free in the liquid. */
export interface Ligand {
  /** mol/L */
  readonly free: number;
  /** log10 of the cumulative constants, one ligand and up */
  readonly logBeta: readonly number[];
}

/** Constants of silver in chloride, of one database. */
export interface SilverChloride {
  readonly logKsp: number;
  /** log10, one chloride and up */
  readonly logBeta: readonly number[];
}

const sum = (terms: readonly number[]): number => terms.reduce((total, term) => total + term, 0);

/**
 * Metal left dissolved over its hydroxide: the free ion, its own hydroxo complexes, and what a ligand
 * holds. Ideal, 25 °C: a floor; real fresh sludge leaves more.
 * @returns mol/L
 */
export function overHydroxide({ logK, protons, hydrolysis }: Hydroxide, pH: number, ligand?: Ligand): number {
  const ion = 10 ** (logK - protons * pH);
  const hydroxo = hydrolysis.map((log, i) => 10 ** (log + (i + 1) * pH));
  const held = ligand ? ligand.logBeta.map((log, i) => 10 ** log * ligand.free ** (i + 1)) : [];
  return ion * (1 + sum(hydroxo) + sum(held));
}

/**
 * Silver left dissolved over its chloride: more chloride first drives it out, then takes it up again as
 * complexes. Ideal, 25 °C.
 * @param free chloride left over, mol/L
 * @returns mol/L
 */
export const overSilverChloride = ({ logKsp, logBeta }: SilverChloride, free: number): number =>
  10 ** logKsp * sum([1 / free, ...logBeta.map((log, i) => 10 ** log * free ** i)]);

/** The constants in use. */
export const silverInChloride: SilverChloride = {
  logKsp: Math.log10(solubilityProducts.AgCl.value),
  logBeta: [
    complexes['AgCl(aq)'].value,
    complexes['AgCl2-'].value,
    complexes['AgCl3--'].value,
    complexes['AgCl4---'].value,
  ],
};

/** Silver, mg/L from mol/L. */
export const silverMgPerLitre = (molar: number): number => molar * atomicWeights.Ag.value * 1e3;

/**
 * Free chloride above which silver stands over a limit again.
 * @param limit mg/L, above the least that can be reached
 * @returns mol/L
 */
export function redissolvesAt(constants: SilverChloride, limit: number): number {
  let [low, high] = [1e-2, 5];
  for (let n = 0; n < 60; n += 1) {
    const middle = (low + high) / 2;
    if (silverMgPerLitre(overSilverChloride(constants, middle)) < limit) low = middle;
    else high = middle;
  }
  return low;
}
