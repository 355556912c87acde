import type { Datum, Provenance } from './datum.ts';
import type { ElementSymbol } from './elements.ts';

/** What behaves alike at the anode. */
export type MetalFamily = 'silver' | 'copper' | 'brass';

interface Composition extends Provenance {
  readonly massPercent: Readonly<Partial<Record<ElementSymbol, number>>>;
}

export interface MetalFacts {
  readonly family: MetalFamily;
  readonly composition: Composition;
  readonly density: Datum;
  /** a second published density, kept beside the one in use */
  readonly otherDensity?: Datum;
}

const alloy = (unit: '%') => ({ unit, uncertainty: { kind: 'standard', value: 0.5 }, validFor: {} }) as const;

/** Metals that can be bitten, with their data. */
export const metals = {
  'fine-silver-999': {
    family: 'silver',
    composition: {
      ...alloy('%'),
      massPercent: { Ag: 99.9, Cu: 0.1 },
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'nominal; rest taken as copper',
    },
    density: {
      value: 10.5,
      unit: 'g/cm3',
      uncertainty: { kind: 'relative', value: 0.001 },
      validFor: { temperature: [15, 30, 'degC'] },
      evidence: 'measured',
      source: 'crcElementDensity',
      locator: 'silver, 20 °C',
    },
  },
  'sterling-925': {
    family: 'silver',
    composition: {
      ...alloy('%'),
      massPercent: { Ag: 92.5, Cu: 7.5 },
      evidence: 'measured',
      source: 'espiSterling',
      locator: 'composition',
    },
    density: {
      value: 10.36,
      unit: 'g/cm3',
      uncertainty: { kind: 'relative', value: 0.003 },
      validFor: { temperature: [15, 30, 'degC'] },
      evidence: 'measured',
      source: 'espiSterling',
      locator: 'density',
    },
  },
  C11000: {
    family: 'copper',
    composition: {
      ...alloy('%'),
      massPercent: { Cu: 100 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C11000 nominal',
    },
    density: {
      value: 8.96,
      unit: 'g/cm3',
      uncertainty: { kind: 'relative', value: 0.004 },
      validFor: { temperature: [15, 30, 'degC'] },
      evidence: 'measured',
      source: 'crcElementDensity',
      locator: 'copper, 20 °C',
      note: 'wrought sheet is quoted at 8.91: the element value is used, the other kept',
    },
    otherDensity: {
      value: 8.91,
      unit: 'g/cm3',
      uncertainty: { kind: 'notStated' },
      validFor: { temperature: [15, 30, 'degC'] },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C11000, 0.322 lb/in3',
    },
  },
  C26000: {
    family: 'brass',
    composition: {
      ...alloy('%'),
      massPercent: { Cu: 70, Zn: 30 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C26000 nominal',
    },
    density: {
      value: 8.53,
      unit: 'g/cm3',
      uncertainty: { kind: 'relative', value: 0.003 },
      validFor: { temperature: [15, 30, 'degC'] },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C26000, 20 °C',
    },
  },
} as const satisfies Record<string, MetalFacts>;

export type BitableMetal = keyof typeof metals;

/** Why a known stock is not bitten. */
export type RefusalReason =
  'chromiumBearing' | 'gold' | 'plated' | 'galvanised' | 'unknownStock' | 'otherHazard' | 'noData';

/** Stock that people have in the drawer, known by name so that it is refused with a reason. */
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
  'unknown-yellow': 'unknownStock',
  'cadmium-solder': 'otherHazard',
  titanium: 'noData',
  'silver-935-lowtarnish': 'noData',
  'coin-900': 'noData',
  C22000: 'noData',
  C23000: 'noData',
  C27000: 'noData',
  C27200: 'noData',
  C28000: 'noData',
  C36000: 'noData',
  C51000: 'noData',
  C75200: 'noData',
  'mild-steel': 'noData',
  'Al-1100': 'noData',
} as const satisfies Record<string, RefusalReason>;

export type RefusedMetal = keyof typeof refusedMetals;

/** Everyday names, each leading to one entry above. */
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
