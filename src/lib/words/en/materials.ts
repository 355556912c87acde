import type { ElementSymbol } from '../../core/facts/elements.ts';
import type { MetalGroup } from '../../core/facts/metal-groups.ts';
import type { BitableMetal, RefusedMetal } from '../../core/facts/metals.ts';
import type { SaltId } from '../../core/facts/salts.ts';
import type { SupplyKind } from '../../core/facts/supplies.ts';

/** Names of stock. */
export const metalNames: Readonly<Record<BitableMetal | RefusedMetal, string>> = {
  'fine-silver-999': 'fine silver',
  'sterling-925': 'sterling silver',
  C11000: 'copper',
  C26000: 'brass 70/30',
  stainless: 'stainless steel',
  '304': 'stainless steel 304',
  '316': 'stainless steel 316',
  'chrome-plated': 'chrome-plated metal',
  nichrome: 'nichrome',
  'Al-6061': 'aluminium 6061',
  gold: 'gold',
  'gold-filled': 'gold-filled metal',
  'silver-plated': 'silver-plated metal',
  plated: 'plated metal',
  galvanised: 'galvanised metal',
  unknown: 'unknown metal',
  'unknown-yellow': 'unknown yellow metal',
  'unknown-white': 'unknown white metal',
  'cadmium-solder': 'metal with cadmium solder',
  titanium: 'titanium',
  'silver-935-lowtarnish': '935 silver',
  'coin-900': 'coin silver',
  C22000: 'commercial bronze 90/10',
  C23000: 'red brass 85/15',
  C27000: 'yellow brass 65/35',
  C27200: 'yellow brass 63/37',
  C28000: 'brass 60/40',
  C36000: 'leaded brass C360',
  C51000: 'phosphor bronze',
  C75200: 'nickel silver',
  'mild-steel': 'mild steel',
  'Al-1100': 'aluminium',
  niobium: 'niobium',
  pewter: 'pewter',
};

/** Names of salts as they are sold. */
export const saltNames: Readonly<Record<SaltId, string>> = {
  NaNO3: 'sodium nitrate',
  KNO3: 'potassium nitrate',
  NaCl: 'table salt (sodium chloride)',
  CuSO4: 'anhydrous copper sulfate',
  'CuSO4.5H2O': 'copper sulfate, blue crystals',
  Na2SO4: 'sodium sulfate',
  'Na2SO4.10H2O': 'sodium sulfate crystals (decahydrate)',
  KCl: 'potassium chloride',
  K2SO4: 'potassium sulfate',
  '(NH4)2SO4': 'ammonium sulfate',
  NH4Cl: 'ammonium chloride',
  NH4NO3: 'ammonium nitrate',
  'Cu(NO3)2': 'copper nitrate',
  ZnSO4: 'zinc sulfate',
  AgNO3: 'silver nitrate',
  NaHCO3: 'baking soda',
  Na2CO3: 'soda ash',
  citric: 'citric acid',
  Na3cit: 'sodium citrate',
  NaOAc: 'sodium acetate',
  Na2S2O3: 'sodium thiosulfate',
  MgSO4: 'Epsom salt',
  FeCl3: 'iron(III) chloride',
};

export const supplyNames: Readonly<Record<SupplyKind, string>> = {
  bench: 'bench supply',
  adapter: 'plug-in adapter',
  battery: 'battery with a fuse',
  alternating: 'alternating current',
  dimmer: 'dimmer or lamp transformer',
  mains: 'mains',
  'home-made': 'home-made supply',
  'car-battery': 'car battery',
  unknown: 'unknown supply',
};

/** The metals whose baths a jar takes, as its record says. */
export const groupNames: Readonly<Record<MetalGroup | 'unknown', string>> = {
  silver: 'silver',
  'copper and brass': 'copper and brass',
  nickel: 'nickel',
  iron: 'iron',
  unknown: 'unknown metal',
};

export const elementNames: Readonly<Record<ElementSymbol, string>> = {
  Au: 'gold',
  Ag: 'silver',
  Cu: 'copper',
  Pb: 'lead',
  Sn: 'tin',
  Ni: 'nickel',
  Zn: 'zinc',
  Fe: 'iron',
  Cr: 'chromium',
  Al: 'aluminium',
  Mn: 'manganese',
  Ge: 'germanium',
  Si: 'silicon',
  P: 'phosphorus',
  Mo: 'molybdenum',
  Mg: 'magnesium',
};
