import { atomicWeights } from '../facts/elements.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { bathSalts, otherSalts } from '../facts/salts.ts';
import { combining, freeCarbonate, freeChloride } from '../facts/treatment.ts';

/** How much of a precipitant to add to a bath, and how much sludge forms. */
export interface Dose {
  readonly reagent: 'NaCl' | 'Na2CO3';
  /** g */
  readonly grams: number;
  /** g; more than this dissolves the metal again */
  readonly most: number;
  /** g, dry */
  readonly sludge: number;
}

const { NaCl } = bathSalts;
const { Na2CO3 } = otherSalts;

/**
 * Table salt that settles silver as its chloride, with a small excess.
 * @param silver g
 * @param litres of bath
 */
export function silverDose(silver: number, litres: number): Dose {
  const moles = silver / atomicWeights.Ag.value;
  const saltFor = (free: number): number => (moles + free * litres) * NaCl.molarMass.value;
  const { wanted, most } = freeChloride;
  return {
    reagent: 'NaCl',
    grams: saltFor(wanted.value),
    most: saltFor(most.value),
    sludge: moles * (atomicWeights.Ag.value + combining.chloride),
  };
}

/** Charge of each metal's ion, which is the number of hydroxides that it binds. */
const charges: Readonly<Partial<Record<ElementSymbol, number>>> = { Ag: 1, Fe: 3 };
const chargeOf = (element: ElementSymbol): number => charges[element] ?? 2;

/**
 * Soda ash that settles base metals, one mole to one, since each ion has two charges. The amount is a guide:
 * the pH shows when it is enough.
 * @param grams by element
 * @param litres of bath
 */
export function carbonateDose(grams: Readonly<Partial<Record<ElementSymbol, number>>>, litres: number): Dose {
  const held = (Object.entries(grams) as [ElementSymbol, number][]).map(([element, mass]) => ({
    moles: mass / atomicWeights[element].value,
    hydroxide: atomicWeights[element].value + chargeOf(element) * combining.hydroxide,
  }));
  const sum = (of: (one: (typeof held)[number]) => number): number =>
    held.reduce((total, one) => total + of(one), 0);
  const moles = sum((one) => one.moles);
  const ashFor = (free: number): number => (moles + free * litres) * Na2CO3.molarMass.value;
  return {
    reagent: 'Na2CO3',
    grams: ashFor(0),
    most: ashFor(freeCarbonate.value),
    sludge: sum((one) => one.moles * one.hydroxide),
  };
}
