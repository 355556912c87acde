import { alloy, dense } from './metal-facts.ts';
import type { MetalFacts } from './metal-facts.ts';

/** Nickel silver and plain steel. */
export const otherMetals = {
  C75200: {
    family: 'nickel',
    composition: {
      ...alloy,
      massPercent: { Cu: 65, Ni: 18, Zn: 17 },
      evidence: 'measured',
      source: 'nickelSilverSheet',
      locator: '65 copper, 18 nickel, 17 zinc',
    },
    density: {
      ...dense(8.75, 0.005),
      evidence: 'measured',
      source: 'densityTables',
      locator: 'C75200, all tempers',
    },
    otherDensity: {
      ...dense(8.73, null),
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'C75200, 0.316 lb/in3',
    },
  },
  'mild-steel': {
    family: 'iron',
    composition: {
      ...alloy,
      massPercent: { Fe: 99.1, Mn: 0.7, Si: 0.2 },
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'nominal; carbon 0.1 to 0.25 left out',
    },
    density: {
      ...dense(7.85, 0.003),
      evidence: 'measured',
      source: 'steelSheets',
      locator: 'carbon steel K03005',
    },
    otherDensity: { ...dense(7.87, null), evidence: 'fromMemory', source: 'memory', locator: 'AISI 1018' },
  },
} as const satisfies Record<string, MetalFacts>;
