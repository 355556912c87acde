import { complexes } from './complexes.ts';
import { solubilityProducts } from './solubility-products.ts';
import { practice } from '../../../src/lib/core/facts/limits.ts';
import type { MetalFamily } from '../../../src/lib/core/facts/metals.ts';
import { findSalt } from '../../../src/lib/core/facts/salts.ts';
import type { Anion } from '../../../src/lib/core/facts/salts/salt-facts.ts';
import { si } from '../../../src/lib/core/units/quantity.ts';
import { convectionLimit } from '../../../src/lib/core/cell/limiting-current.ts';
import type { Film } from '../../../src/lib/core/cell/limiting-current.ts';

/**
 * Whether the salt that a bite makes can leave the metal: how much of it dissolves there, against how
 * much must, for free convection to carry the trade's gentle current away.
 */

/** Anion of a usual bath, mol/L. */
const BATH = 1;
/** Height of the piece that the comparison is made for, m. */
const HEIGHT = si<'length'>(0.03);
/** Any metal ion in water; the answer is a matter of powers of ten. */
const still: Omit<Film, 'excess'> = {
  diffusivity: 8e-10,
  viscosity: 1.5e-6,
  expansion: 1.4e-4,
  electrons: 1,
};

/** Concentration at the metal that the trade's current asks for, mol/L: the limit runs with its 5/4th power. */
export function neededAtMetal(): number {
  const one = convectionLimit({ ...still, excess: 1000 }, HEIGHT);
  return ((practice.targetDensity.value * 100) / one) ** 0.8;
}

/** A well soluble salt's saturation from its table, mol per litre of water at 20 °C. */
function fromTable(id: string): number {
  const facts = findSalt(id)?.facts;
  if (!facts?.solubility) throw new RangeError(`no solubility table for ${id} found, one expected`);
  const at20 = facts.solubility.x.indexOf(20);
  return (10 * (facts.solubility.y[at20] as number)) / facts.molarMass.value;
}

/** A sparing 1:1 salt in an excess of its anion that also holds the metal as complexes, ideal. */
function sparing(product: number, anion: number, log10beta: readonly number[]): number {
  const free = product / anion;
  return log10beta.reduce((sum, log, i) => sum + free * 10 ** log * anion ** (i + 1), free);
}

const beta = (...ids: (keyof typeof complexes)[]): number[] => ids.map((id) => complexes[id].value);

/** What dissolves at the metal, mol/L, by family and anion; null where no constant was found. */
const dissolves: Readonly<Record<MetalFamily, Readonly<Record<Anion, (() => number) | null>>>> = {
  silver: {
    nitrate: () => fromTable('AgNO3'),
    chloride: () => sparing(solubilityProducts.AgCl.value, BATH, beta('AgCl(aq)', 'AgCl2-', 'AgCl3--')),
    // 2 Ag+ a sulfate: [Ag+]² = K/[SO4--]
    sulfate: () => Math.sqrt(solubilityProducts.Ag2SO4.value / BATH),
  },
  copper: {
    nitrate: () => fromTable('Cu(NO3)2'),
    chloride: () => sparing(solubilityProducts.CuCl.value, BATH, beta('CuCl(aq)', 'CuCl2-', 'CuCl3--')),
    sulfate: () => fromTable('CuSO4'),
  },
  brass: { nitrate: () => fromTable('Cu(NO3)2'), chloride: null, sulfate: () => fromTable('ZnSO4') },
  bronze: { nitrate: null, chloride: null, sulfate: () => fromTable('CuSO4') },
  nickel: { nitrate: null, chloride: null, sulfate: null },
  iron: { nitrate: null, chloride: null, sulfate: null },
};

/** `leaves`: all of it dissolves; `films`: a part stays and must be brushed off; `seals`: the bite stops. */
export type CarryAway = 'leaves' | 'films' | 'seals';

/** Shares of what is needed: below the first the film closes, below the second it forms and gives way. */
const CLOSES = 1e-3;
const FORMS = 0.1;

/**
 * Judges a metal and an anion by the solubility of the salt they make.
 * @returns null where no constant was found
 */
export function carryAway(family: MetalFamily, anion: Anion): { share: number; verdict: CarryAway } | null {
  const most = dissolves[family][anion]?.();
  if (most === undefined) return null;
  const share = most / neededAtMetal();
  return { share, verdict: share < CLOSES ? 'seals' : share < FORMS ? 'films' : 'leaves' };
}
