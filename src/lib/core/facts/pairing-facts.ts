import type { Backing } from './first-aid.ts';
import type { MetalFamily } from './metals.ts';
import type { Anion, Cation } from './salts/salt-facts.ts';

/** Metals that a bath of this anion passivates: the current makes gas and no metal dissolves. */
export const passiveIn: Readonly<Partial<Record<MetalFamily, Readonly<Partial<Record<Anion, Backing>>>>>> = {
  nickel: {
    nitrate: {
      evidence: 'measured',
      source: 'nickelPassive',
      locator: 'nickel in nitrate dissolves only from 0.5 A/cm² up',
    },
    sulfate: { evidence: 'fromMemory', source: 'memory', locator: 'nickel is passive in neutral sulfate' },
  },
  iron: {
    nitrate: {
      evidence: 'measured',
      source: 'steelNitrate',
      locator: 'most of the current makes oxygen instead of taking metal',
    },
    sulfate: { evidence: 'fromMemory', source: 'memory', locator: 'steel is passive in neutral sulfate' },
  },
};

/** Metals that leave a skin on the piece in a bath of this anion. */
export const skinIn: Readonly<Partial<Record<MetalFamily, Readonly<Partial<Record<Anion, Backing>>>>>> = {
  bronze: {
    nitrate: {
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'tin turns to its own oxide, metastannic acid',
    },
  },
};

/** What a cation of the bath does besides carrying current. */
export const cationDoes: Readonly<Record<Cation, 'nothing' | 'complexes' | 'platesOut' | 'etches' | 'acid'>> =
  {
    sodium: 'nothing',
    potassium: 'nothing',
    magnesium: 'nothing',
    ammonium: 'complexes',
    copper: 'platesOut',
    silver: 'platesOut',
    zinc: 'platesOut',
    iron: 'etches',
    hydrogen: 'acid',
  };
