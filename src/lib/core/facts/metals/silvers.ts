import { alloy, dense } from './metal-facts.ts';
import type { MetalFacts } from './metal-facts.ts';

/** Silver and its alloys. */
export const silvers = {
  'fine-silver-999': {
    family: 'silver',
    composition: {
      ...alloy,
      massPercent: { Ag: 99.9, Cu: 0.1 },
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'nominal; rest taken as copper',
    },
    density: {
      ...dense(10.5, 0.001),
      evidence: 'measured',
      source: 'crcElementDensity',
      locator: 'silver, 20 °C',
    },
  },
  'sterling-925': {
    family: 'silver',
    composition: {
      ...alloy,
      massPercent: { Ag: 92.5, Cu: 7.5 },
      evidence: 'measured',
      source: 'espiSterling',
      locator: 'composition',
    },
    density: { ...dense(10.36, 0.003), evidence: 'measured', source: 'espiSterling', locator: 'density' },
  },
  'silver-935-lowtarnish': {
    family: 'silver',
    composition: {
      ...alloy,
      massPercent: { Ag: 93.5, Cu: 5.2, Ge: 1.3 },
      evidence: 'measured',
      source: 'lowTarnishSilver',
      locator: '93.5 to 97.3 % silver, about 1.3 % germanium, rest copper',
      note: 'generic: copper 4 to 5.5, germanium 0.5 to 1.3, zinc 0 to 2; what a maker puts in is not told',
    },
    density: {
      ...dense(10.28, 0.01),
      evidence: 'computed',
      source: 'lowTarnishSilver',
      locator: 'volumes of its elements added up',
    },
  },
  'coin-900': {
    family: 'silver',
    composition: {
      ...alloy,
      massPercent: { Ag: 90, Cu: 10 },
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'nominal',
    },
    density: {
      ...dense(10.34, 0.005),
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'often quoted as 10.31 to 10.34',
    },
  },
} as const satisfies Record<string, MetalFacts>;
