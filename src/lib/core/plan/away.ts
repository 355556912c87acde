import { carbonateDose, silverDose } from '../chemistry/dose.ts';
import type { Dose } from '../chemistry/dose.ts';
import type { Use } from '../cell/setup.ts';
import type { Datum } from '../facts/datum.ts';
import { atomicWeights } from '../facts/elements.ts';
import type { ElementSymbol } from '../facts/elements.ts';
import { findSalt } from '../facts/salts.ts';
import type { Cation } from '../facts/salts/salt-facts.ts';
import { metalLines, pHWindows, retireAfter } from '../facts/treatment.ts';
import type { MetalGroup } from '../facts/metal-groups.ts';
import type { MetalLine } from '../facts/treatment.ts';
import { wasteCodes } from '../facts/waste-codes.ts';
import type { WasteCode } from '../facts/waste-codes.ts';

/** What a bath holds now, to decide where it may go. */
export interface StandingBath {
  /** id of the salt as bought */
  readonly salt: string;
  readonly group: MetalGroup | 'unknown';
  /** g of salt as bought, per litre of water */
  readonly strength: number;
  readonly volumeMl: number;
  /** mg by element, dissolved off pieces; at most this */
  readonly heldMg: Readonly<Record<string, number>>;
  /** A·h that a litre has passed */
  readonly perLitre: number;
}

/** What the maker's authority has said, as the maker recorded it. */
export interface Permission {
  readonly use: Use;
  readonly mayTreat: boolean;
}

/** Why a bath is never treated here, whatever an authority allows. */
export type NeverTreat =
  | 'chromium'
  | 'nickel'
  | 'ammonium'
  | 'citrate'
  | 'lead'
  | 'metal-salt'
  | 'silver-in-chloride'
  | 'mixed'
  | 'unknown';

export interface Held {
  readonly element: ElementSymbol;
  readonly mg: number;
  readonly mgPerLitre: number;
  /** for scale, never a limit for pouring; null where the law quoted has none */
  readonly line: MetalLine | null;
}

/** Where a bath may go. */
export interface Away {
  readonly held: readonly Held[];
  readonly worn: { readonly limit: Datum; readonly isWorn: boolean };
  /** it may have made ammonia: smell, pH and crust are looked at before it is closed */
  readonly asksForAmmonia: boolean;
  readonly neverTreat: readonly NeverTreat[];
  /** null unless the bath can be treated and the authority's word is recorded */
  readonly dose: (Dose & { readonly window: Datum | null }) | null;
  readonly codes: readonly WasteCode[];
}

const PER_LITRE = 1e3;
const cationMetal: Readonly<Partial<Record<Cation, ElementSymbol>>> = {
  copper: 'Cu',
  silver: 'Ag',
  zinc: 'Zn',
  iron: 'Fe',
};

/** Metal that a soluble metal salt brings itself. Crystal water is counted as salt, so this is an upper bound. */
function ofTheSalt({ salt, strength, volumeMl }: StandingBath): Partial<Record<ElementSymbol, number>> {
  const found = findSalt(salt);
  const element = found && cationMetal[found.facts.cation];
  if (!found || !element) return {};
  const moles = strength / (found.hydrate ?? found.facts).molarMass.value;
  return { [element]: moles * atomicWeights[element].value * volumeMl };
}

function heldIn(bath: StandingBath): readonly Held[] {
  const own = ofTheSalt(bath);
  const elements = [...new Set([...Object.keys(bath.heldMg), ...Object.keys(own)])] as ElementSymbol[];
  const litres = bath.volumeMl / PER_LITRE;
  return elements
    .map((element) => ({ element, mg: (bath.heldMg[element] ?? 0) + (own[element] ?? 0) }))
    .filter(({ mg }) => mg > 0)
    .map(({ element, mg }) => ({
      element,
      mg,
      mgPerLitre: litres > 0 ? mg / litres : 0,
      line: metalLines[element] ?? null,
    }))
    .toSorted((a, b) => b.mg - a.mg);
}

/** What one metal group's jar may hold of another's before it is a mixture, mg/L. */
const STRAY = 5;
/** Metals that a group's pieces shed. */
const shedBy: Readonly<Record<MetalGroup, readonly ElementSymbol[]>> = {
  silver: ['Ag', 'Cu', 'Ge'],
  'copper and brass': ['Cu', 'Zn', 'Sn', 'P', 'Si', 'Mn', 'Fe', 'Ni', 'Pb'],
  nickel: ['Ni', 'Cu', 'Zn', 'Mn', 'Fe'],
  iron: ['Fe', 'Mn', 'Si', 'P', 'Cu', 'Ni'],
};

function neverTreat({ salt, group }: StandingBath, held: readonly Held[]): readonly NeverTreat[] {
  const facts = findSalt(salt)?.facts;
  const holds = (element: ElementSymbol): number =>
    held.find((one) => one.element === element)?.mgPerLitre ?? 0;
  const strays = held.some(
    ({ element, mgPerLitre }) =>
      group !== 'unknown' && mgPerLitre >= STRAY && !shedBy[group].includes(element),
  );
  const reasons: readonly (readonly [NeverTreat, boolean])[] = [
    ['chromium', holds('Cr') > 0],
    ['nickel', group === 'nickel' || holds('Ni') >= STRAY],
    ['ammonium', facts?.cation === 'ammonium'],
    ['citrate', facts?.anion === 'citrate'],
    ['lead', holds('Pb') >= STRAY],
    ['metal-salt', facts !== undefined && cationMetal[facts.cation] !== undefined],
    ['silver-in-chloride', facts?.anion === 'chloride' && (group === 'silver' || holds('Ag') > 0)],
    ['mixed', strays],
    ['unknown', group === 'unknown' || facts === undefined],
  ];
  return reasons.filter(([, applies]) => applies).map(([reason]) => reason);
}

function doseFor({ group, volumeMl }: StandingBath, held: readonly Held[]): Away['dose'] {
  const litres = volumeMl / PER_LITRE;
  const grams = Object.fromEntries(held.map(({ element, mg }) => [element, mg / PER_LITRE]));
  if (held.length === 0 || !(litres > 0)) return null;
  if (group === 'silver') return { ...silverDose(grams['Ag'] ?? 0, litres), window: null };
  const { copper, brass, iron } = pHWindows;
  const window = group === 'iron' ? iron : (grams['Zn'] ?? 0) > 0 ? brass : copper;
  return { ...carbonateDose(grams, litres), window };
}

/**
 * What a bath holds and where it may go. It is handed over untreated unless the maker has recorded that
 * their authority allows otherwise; some baths are never treated.
 */
export function awayFor(bath: StandingBath, { use, mayTreat }: Permission): Away {
  const facts = findSalt(bath.salt)?.facts;
  const held = heldIn(bath);
  const never = neverTreat(bath, held);
  const isSilverNitrate =
    facts?.anion === 'nitrate' && (bath.group === 'silver' || held.some(({ element }) => element === 'Ag'));
  const limit = isSilverNitrate ? retireAfter.silverNitrate : retireAfter.other;
  const origin = use === 'home' ? 'household' : 'business';
  return {
    held,
    worn: { limit, isWorn: bath.perLitre >= limit.value },
    asksForAmmonia: isSilverNitrate,
    neverTreat: never,
    dose: mayTreat && never.length === 0 ? doseFor(bath, held) : null,
    codes: wasteCodes.filter((one) => one.origin === origin),
  };
}

/** What silver would fetch at a price, in the price's own money. */
export const worthOf = (grams: number, pricePerGram: number): number => grams * pricePerGram;
