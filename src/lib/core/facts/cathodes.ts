import type { BitableMetal, RefusedMetal } from './metals.ts';
import type { Backing } from './first-aid.ts';

/** Why a metal may not be used as a plate. */
export type PlateRefusal = 'alkali' | 'chromiumSkin' | 'foreign' | 'unknown';

/**
 * Metals that may be the plate for any piece they do not harm. A plate of the piece's own metal is always
 * allowed.
 */
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

/**
 * Why each other metal is refused as a plate. The type requires every metal to be in one of the two lists.
 */
export const plateRefusals: Readonly<
  Record<Exclude<BitableMetal | RefusedMetal, (typeof plateMetals)[number]>, PlateRefusal>
> = {
  // lye forms at the plate and eats these metals, giving off hydrogen, even with the current off
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

/** Sources of the two lists. */
export const plateBacking = {
  evidence: 'fromMemory',
  source: 'memory',
  locator:
    'aluminium and zinc dissolve in lye with hydrogen; a foreign plate sheds its metal when the current is off',
} as const satisfies Backing;
