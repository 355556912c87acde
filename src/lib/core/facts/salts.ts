import { ammoniumChloride } from './salts/ammonium-chloride.ts';
import { ammoniumNitrate } from './salts/ammonium-nitrate.ts';
import { ammoniumSulfate } from './salts/ammonium-sulfate.ts';
import { citricAcid } from './salts/citric-acid.ts';
import { copperNitrate } from './salts/copper-nitrate.ts';
import { copperSulfate } from './salts/copper-sulfate.ts';
import { ironChloride } from './salts/iron-chloride.ts';
import { magnesiumSulfate } from './salts/magnesium-sulfate.ts';
import { potassiumChloride } from './salts/potassium-chloride.ts';
import { potassiumNitrate } from './salts/potassium-nitrate.ts';
import { potassiumSulfate } from './salts/potassium-sulfate.ts';
import type { Hydrate, SaltData, SaltFacts } from './salts/salt-facts.ts';
import { silverNitrate } from './salts/silver-nitrate.ts';
import { sodiumAcetate } from './salts/sodium-acetate.ts';
import { sodiumBicarbonate } from './salts/sodium-bicarbonate.ts';
import { sodiumCarbonate } from './salts/sodium-carbonate.ts';
import { sodiumChloride } from './salts/sodium-chloride.ts';
import { sodiumCitrate } from './salts/sodium-citrate.ts';
import { sodiumNitrate } from './salts/sodium-nitrate.ts';
import { sodiumSulfate } from './salts/sodium-sulfate.ts';
import { sodiumThiosulfate } from './salts/sodium-thiosulfate.ts';
import { zincSulfate } from './salts/zinc-sulfate.ts';

/** Salts that a bath can be made of. */
export const bathSalts = {
  NaNO3: sodiumNitrate,
  KNO3: potassiumNitrate,
  NaCl: sodiumChloride,
  KCl: potassiumChloride,
  CuSO4: copperSulfate,
  Na2SO4: sodiumSulfate,
  K2SO4: potassiumSulfate,
} as const satisfies Record<string, SaltFacts>;

export type BathSalt = keyof typeof bathSalts;

/** Why a known salt is refused for a bath. */
export type SaltRefusal = 'ammoniumNitrate' | 'ammonium' | 'treatmentOnly' | 'poorBath' | 'etchant';

/** Other salts that makers may own. Their names are known so that they are refused with a reason. */
export const refusedSalts = {
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

/** Data of the refused salts: solutions of them can still be weighed, named and diluted. */
export const otherSalts = {
  '(NH4)2SO4': ammoniumSulfate,
  NH4Cl: ammoniumChloride,
  NH4NO3: ammoniumNitrate,
  'Cu(NO3)2': copperNitrate,
  ZnSO4: zincSulfate,
  AgNO3: silverNitrate,
  NaHCO3: sodiumBicarbonate,
  Na2CO3: sodiumCarbonate,
  citric: citricAcid,
  Na3cit: sodiumCitrate,
  NaOAc: sodiumAcetate,
  Na2S2O3: sodiumThiosulfate,
  MgSO4: magnesiumSulfate,
  FeCl3: ironChloride,
} as const satisfies Record<RefusedSalt, SaltData>;

/** Ids of a salt's forms: the anhydrous solid and each hydrate. */
type FormOf<S> = S extends { readonly id: infer Id; readonly hydrates: readonly (infer H)[] }
  ? Id | (H extends { readonly id: infer Crystal } ? Crystal : never)
  : never;

/** A bath salt as it is bought, such as CuSO4.5H2O. */
export type BoughtSaltId = FormOf<(typeof bathSalts)[BathSalt]>;
/** Salts that a job may name: a bath salt as bought, or a refused salt. */
export type SaltId = BoughtSaltId | RefusedSalt;
/** Any form of any salt in the tables. */
export type ShelfSaltId = BoughtSaltId | FormOf<(typeof otherSalts)[RefusedSalt]>;

/** Every salt that has data, by its anhydrous formula. */
export const allSalts: Readonly<Record<BathSalt | RefusedSalt, SaltData>> = { ...bathSalts, ...otherSalts };

/** A salt in the form it is bought in, whether a bath can be made of it or not. */
export interface ShelfSalt {
  readonly facts: SaltData;
  readonly hydrate: Hydrate | null;
}

const shelf = new Map<string, ShelfSalt>();
for (const facts of Object.values(allSalts)) {
  shelf.set(facts.id, { facts, hydrate: null });
  for (const hydrate of facts.hydrates) shelf.set(hydrate.id, { facts, hydrate });
}

/** Ids of every form of every salt, such as MgSO4.7H2O. */
export const shelfSaltIds = [...shelf.keys()] as readonly ShelfSaltId[];

/** Any salt by the id of its form; null when it is unknown. */
export const findSalt = (id: string): ShelfSalt | null => shelf.get(id) ?? null;

/** The anhydrous formula of a salt in any form; null when it is unknown. */
export const saltIdOf = (id: string): BathSalt | RefusedSalt | null =>
  (findSalt(id)?.facts.id ?? null) as BathSalt | RefusedSalt | null;

/** The salt and the crystal water of a form that is known to be in the tables. */
export const shelfSalt = (id: ShelfSaltId): ShelfSalt & { readonly base: BathSalt | RefusedSalt } => {
  const salt = shelf.get(id) as ShelfSalt;
  return { ...salt, base: salt.facts.id as BathSalt | RefusedSalt };
};

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
export const boughtSaltIds = [...bought.keys()] as readonly BoughtSaltId[];

export const findBoughtSalt = (id: string): BoughtSalt | null => bought.get(id) ?? null;

/**
 * Reads a salt as people write it: middle dots, stars, spaces and small subscripts make no difference.
 * @returns the id; null when no such salt is known
 */
export function canonicalSalt(typed: string): SaltId | null {
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
  if (findBoughtSalt(id)) return id as BoughtSaltId;
  const anhydrous = id.replace(/\.\d*(\.\d)?H2O$/, '');
  return Object.hasOwn(refusedSalts, anhydrous) ? (anhydrous as RefusedSalt) : null;
}
