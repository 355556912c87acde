import type { Attachment, Faces, Hanger, Piece, Supply, Tub, Water } from '../core/cell/setup.ts';
import type { ElementSymbol } from '../core/facts/elements.ts';
import type { BitableMetal, RefusedMetal } from '../core/facts/metals.ts';
import type { BathSalt, RefusedSalt } from '../core/facts/salts.ts';
import type { ResistKind, SupplyKind } from '../core/facts/supplies.ts';

/**
 * The number of every word that settings can hold. Printed sheets carry them for years: new words take
 * the next number, none is ever given away again.
 */
export const metalNumbers = {
  'fine-silver-999': 0,
  'sterling-925': 1,
  C11000: 2,
  C26000: 3,
  stainless: 4,
  '304': 5,
  '316': 6,
  'chrome-plated': 7,
  nichrome: 8,
  'Al-6061': 9,
  gold: 10,
  'gold-filled': 11,
  'silver-plated': 12,
  plated: 13,
  galvanised: 14,
  unknown: 15,
  'unknown-yellow': 16,
  'cadmium-solder': 17,
  titanium: 18,
  'silver-935-lowtarnish': 19,
  'coin-900': 20,
  C22000: 21,
  C23000: 22,
  C27000: 23,
  C27200: 24,
  C28000: 25,
  C36000: 26,
  C51000: 27,
  C75200: 28,
  'mild-steel': 29,
  'Al-1100': 30,
  niobium: 31,
  pewter: 32,
} as const satisfies Record<BitableMetal | RefusedMetal, number>;

/** Hydrates have their own; a test holds them to the tables of facts. */
export const saltNumbers = {
  NaNO3: 0,
  KNO3: 1,
  NaCl: 2,
  CuSO4: 3,
  'CuSO4.5H2O': 4,
  Na2SO4: 5,
  'Na2SO4.10H2O': 6,
  KCl: 7,
  K2SO4: 8,
  '(NH4)2SO4': 9,
  NH4Cl: 10,
  NH4NO3: 11,
  'Cu(NO3)2': 12,
  ZnSO4: 13,
  AgNO3: 14,
  NaHCO3: 15,
  Na2CO3: 16,
  citric: 17,
  Na3cit: 18,
  NaOAc: 19,
  Na2S2O3: 20,
  MgSO4: 21,
  FeCl3: 22,
} as const satisfies Record<BathSalt | RefusedSalt, number> & Record<string, number>;

export const elementNumbers = {
  Ag: 0,
  Cu: 1,
  Zn: 2,
  Sn: 3,
  Ni: 4,
  Fe: 5,
  Cr: 6,
  Al: 7,
  Au: 8,
  Pb: 9,
  Mn: 10,
  Mo: 11,
  Ge: 12,
  Si: 13,
  Mg: 14,
  P: 15,
} as const satisfies Record<ElementSymbol, number>;

export const resistNumbers = {
  'nail-varnish': 0,
  'paint-pen': 1,
  'permanent-marker': 2,
  vinyl: 3,
  toner: 4,
  'dry-film': 5,
  asphaltum: 6,
} as const satisfies Record<ResistKind, number>;

export const supplyNumbers = {
  bench: 0,
  adapter: 1,
  battery: 2,
  alternating: 3,
  dimmer: 4,
  unknown: 5,
  mains: 6,
  'home-made': 7,
  'car-battery': 8,
} as const satisfies Record<SupplyKind, number>;

export const waterNumbers = { deionised: 0, distilled: 1, rain: 2, tap: 3 } as const satisfies Record<
  Water,
  number
>;
export const shapeNumbers = { rectangle: 0, disc: 1, band: 2 } as const satisfies Record<
  Piece['shape'],
  number
>;
export const facesNumbers = { front: 0, back: 1, both: 2 } as const satisfies Record<Faces, number>;
export const tubNumbers = { box: 0, round: 1, jug: 2 } as const satisfies Record<Tub['kind'], number>;
export const areaNumbers = { area: 0, share: 1, later: 2 } as const satisfies Record<
  Piece['openAreaFrom'],
  number
>;
export const controlNumbers = { volts: 0, amps: 1 } as const satisfies Record<Supply['control'], number>;
export const hangerNumbers = { wire: 0, hole: 1, tab: 2, rack: 3 } as const satisfies Record<Hanger, number>;
export const attachmentNumbers = { seams: 0, stones: 1, glue: 2, hinges: 3 } as const satisfies Record<
  Attachment,
  number
>;
