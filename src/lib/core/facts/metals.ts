import { brasses } from './metals/brasses.ts';
import { coppers } from './metals/coppers.ts';
import type { MetalFacts } from './metals/metal-facts.ts';
import { otherMetals } from './metals/other-metals.ts';
import { silvers } from './metals/silvers.ts';

export type { MetalData, MetalFacts, MetalFamily } from './metals/metal-facts.ts';
export { refusedStock } from './metals/refused-stock.ts';

/** Metals that can be etched, with their data. */
export const metals = { ...silvers, ...coppers, ...brasses, ...otherMetals } as const satisfies Record<
  string,
  MetalFacts
>;

export type BitableMetal = keyof typeof metals;

/** Why a known metal is not etched. */
export type RefusalReason =
  | 'chromiumBearing'
  | 'gold'
  | 'plated'
  | 'galvanised'
  | 'unknownStock'
  | 'unknownYellow'
  | 'unknownWhite'
  | 'cadmium'
  | 'oxide'
  | 'pits'
  | 'noData';

/** Other metals that makers may own. Their names are known so that they are refused with a reason. */
export const refusedMetals = {
  '304': 'chromiumBearing',
  '316': 'chromiumBearing',
  stainless: 'chromiumBearing',
  'chrome-plated': 'chromiumBearing',
  nichrome: 'chromiumBearing',
  'Al-6061': 'chromiumBearing',
  gold: 'gold',
  'gold-filled': 'plated',
  'silver-plated': 'plated',
  plated: 'plated',
  galvanised: 'galvanised',
  unknown: 'unknownStock',
  'unknown-yellow': 'unknownYellow',
  'unknown-white': 'unknownWhite',
  'cadmium-solder': 'cadmium',
  titanium: 'oxide',
  niobium: 'oxide',
  'Al-1100': 'pits',
  pewter: 'noData',
} as const satisfies Record<string, RefusalReason>;

export type RefusedMetal = keyof typeof refusedMetals;

/** Everyday names, each with the id of an entry above. */
export const metalNames: Readonly<Record<string, BitableMetal | RefusedMetal>> = {
  'fine-silver': 'fine-silver-999',
  sterling: 'sterling-925',
  'sterling-silver': 'sterling-925',
  copper: 'C11000',
  brass: 'C26000',
  'brass-70-30': 'C26000',
  'cartridge-brass': 'C26000',
  'stainless-steel': 'stainless',
  'stainless-304': '304',
  'stainless-316': '316',
  chrome: 'chrome-plated',
  'coin-silver': 'coin-900',
  'gilding-metal': 'C22000',
  'red-brass': 'C23000',
  'leaded-brass': 'C36000',
  'free-cutting-brass': 'C36000',
  alpaca: 'C75200',
  tin: 'pewter',
  'gold-plated': 'plated',
  'nickel-silver': 'C75200',
  bronze: 'C51000',
  steel: 'mild-steel',
  aluminium: 'Al-1100',
  aluminum: 'Al-1100',
  galvanized: 'galvanised',
  zinc: 'galvanised',
};

export const isBitable = (id: string): id is BitableMetal => Object.hasOwn(metals, id);
