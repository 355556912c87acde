import type { Hydrate, SaltFacts } from './salts/salt-facts.ts';
import { copperSulfate } from './salts/copper-sulfate.ts';
import { potassiumNitrate } from './salts/potassium-nitrate.ts';
import { sodiumChloride } from './salts/sodium-chloride.ts';
import { sodiumNitrate } from './salts/sodium-nitrate.ts';
import { sodiumSulfate } from './salts/sodium-sulfate.ts';

/** Salts a bath can be made of. */
export const bathSalts = {
  NaNO3: sodiumNitrate,
  KNO3: potassiumNitrate,
  NaCl: sodiumChloride,
  CuSO4: copperSulfate,
  Na2SO4: sodiumSulfate,
} as const satisfies Record<string, SaltFacts>;

export type BathSalt = keyof typeof bathSalts;

/** Why a known salt makes no bath here. */
export type SaltRefusal =
  'ammoniumNitrate' | 'ammonium' | 'chlorideOther' | 'treatmentOnly' | 'poorBath' | 'etchant';

/** Other salts on a maker's shelf, known by name so that they are refused with a reason. */
export const refusedSalts = {
  KCl: 'chlorideOther',
  K2SO4: 'poorBath',
  '(NH4)2SO4': 'ammonium',
  NH4Cl: 'ammonium',
  NH4NO3: 'ammoniumNitrate',
  'Cu(NO3)2': 'poorBath',
  ZnSO4: 'poorBath',
  AgNO3: 'poorBath',
  NaHCO3: 'treatmentOnly',
  Na2CO3: 'treatmentOnly',
  citric: 'poorBath',
  Na3cit: 'poorBath',
  NaOAc: 'poorBath',
  Na2S2O3: 'treatmentOnly',
  MgSO4: 'poorBath',
  FeCl3: 'etchant',
} as const satisfies Record<string, SaltRefusal>;

export type RefusedSalt = keyof typeof refusedSalts;

/** Anions that make a refused salt fall under the same pairing rules as a bath salt. */
export const chlorideSalts: readonly string[] = ['NaCl', 'KCl', 'NH4Cl', 'FeCl3'];
export const ammoniumSalts: readonly string[] = ['(NH4)2SO4', 'NH4Cl', 'NH4NO3'];

/** A salt as bought: the anhydrous solid, or one of its hydrates. */
export interface BoughtSalt {
  readonly facts: SaltFacts;
  readonly hydrate: Hydrate | null;
}

const bought = new Map<string, BoughtSalt>();
for (const facts of Object.values(bathSalts) as readonly SaltFacts[]) {
  bought.set(facts.id, { facts, hydrate: null });
  for (const hydrate of facts.hydrates) bought.set(hydrate.id, { facts, hydrate });
}

/** Ids of every form of every bath salt, such as CuSO4.5H2O. */
export const boughtSaltIds: readonly string[] = [...bought.keys()];

export const findBoughtSalt = (id: string): BoughtSalt | null => bought.get(id) ?? null;

/**
 * Reads a salt the way people write it: middle dots, stars, spaces and small subscripts are all one.
 * Returns the id, or null when no such salt is known.
 */
export function canonicalSalt(typed: string): string | null {
  const plain = typed
    .replace(/[₀-₉]/g, (digit) => String(digit.charCodeAt(0) - 0x2080))
    .replace(/\s*[·*⋅•.]\s*|\s+(?=\d)/g, '.')
    .trim();
  const everyday: Readonly<Record<string, string>> = {
    'table-salt': 'NaCl',
    'sodium-nitrate': 'NaNO3',
    'potassium-nitrate': 'KNO3',
    'sodium-chloride': 'NaCl',
    'sodium-sulfate': 'Na2SO4',
    'copper-sulfate': 'CuSO4.5H2O',
    'ammonium-nitrate': 'NH4NO3',
    'ammonium-chloride': 'NH4Cl',
    'ammonium-sulfate': '(NH4)2SO4',
    Na3C6H5O7: 'Na3cit',
    C6H8O7: 'citric',
    CH3COONa: 'NaOAc',
  };
  const id = (Object.hasOwn(everyday, plain) ? everyday[plain] : undefined) ?? plain;
  if (findBoughtSalt(id)) return id;
  const anhydrous = id.replace(/\.\d*(\.\d)?H2O$/, '');
  return Object.hasOwn(refusedSalts, anhydrous) ? anhydrous : null;
}
