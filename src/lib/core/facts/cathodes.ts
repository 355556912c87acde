import type { BitableMetal, RefusedMetal } from './metals.ts';
import type { Backing } from './first-aid.ts';

/** Why a metal is no plate. */
export type PlateRefusal = 'alkali' | 'chromiumSkin' | 'foreign' | 'unknown';

/** Metals that hang as a plate beside any piece they do not harm; the piece's own metal always may. */
export const plateMetals = [
  'fine-silver-999',
  'sterling-925',
  'coin-900',
  'silver-935-lowtarnish',
  'C11000',
  'C22000',
  'C23000',
  'C26000',
  'C27000',
  'C27200',
  'C28000',
  'C51000',
] as const satisfies readonly BitableMetal[];

/** What is wrong with the others: every metal stands in one list or the other. */
export const plateRefusals: Readonly<
  Record<Exclude<BitableMetal | RefusedMetal, (typeof plateMetals)[number]>, PlateRefusal>
> = {
  // the plate makes lye, and lye eats these with hydrogen, current or no current
  'Al-1100': 'alkali',
  'Al-6061': 'alkali',
  galvanised: 'alkali',
  pewter: 'alkali',
  'chrome-plated': 'chromiumSkin',
  nichrome: 'chromiumSkin',
  '304': 'foreign',
  '316': 'foreign',
  stainless: 'foreign',
  gold: 'foreign',
  'gold-filled': 'unknown',
  'silver-plated': 'unknown',
  plated: 'unknown',
  unknown: 'unknown',
  'unknown-yellow': 'unknown',
  'unknown-white': 'unknown',
  'cadmium-solder': 'unknown',
  titanium: 'foreign',
  niobium: 'foreign',
  C36000: 'foreign',
  C75200: 'foreign',
  'mild-steel': 'foreign',
};

/** What these judgements rest on. */
export const plateBacking = {
  evidence: 'fromMemory',
  source: 'memory',
  locator:
    'aluminium and zinc dissolve in lye with hydrogen; a foreign plate sheds its metal when the current is off',
} as const satisfies Backing;
