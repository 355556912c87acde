import { alloy, dense } from './metal-facts.ts';
import type { MetalFacts } from './metal-facts.ts';

/** Copper and zinc, with and without lead. */
export const brasses = {
  C22000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 90, Zn: 10 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C22000: copper 89 to 91',
    },
    density: { ...dense(8.8, 0.003), evidence: 'measured', source: 'brassMill', locator: 'C22000, 20 °C' },
  },
  C23000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 85, Zn: 15 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C23000 nominal',
    },
    density: {
      ...dense(8.75, 0.003),
      evidence: 'measured',
      source: 'densityTables',
      locator: 'C23000, all tempers',
    },
  },
  C26000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 70, Zn: 30 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C26000 nominal',
    },
    density: {
      ...dense(8.53, 0.003),
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C26000, 20 °C',
      note: '8.2 also circulates: an estimate, 4 % off two measured sheets, not used',
    },
  },
  C27000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 65, Zn: 35 },
      evidence: 'measured',
      source: 'wroughtBrasses',
      locator: 'C27000: copper 63 to 68.5',
    },
    density: {
      ...dense(8.47, 0.003),
      evidence: 'measured',
      source: 'densityTables',
      locator: 'C27000, all tempers',
    },
  },
  C27200: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 63, Zn: 37 },
      evidence: 'fromMemory',
      source: 'memory',
      locator: 'C27200 nominal; copper 62 to 65',
    },
    density: { ...dense(8.44, 0.004), evidence: 'fromMemory', source: 'memory', locator: 'C27200' },
  },
  C28000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 60, Zn: 40 },
      evidence: 'measured',
      source: 'wroughtBrasses',
      locator: 'C28000: copper 59 to 63, lead up to 0.3',
    },
    density: {
      ...dense(8.39, 0.004),
      evidence: 'measured',
      source: 'densityTables',
      locator: 'C28000, all tempers',
      note: '8.0 also circulates: an estimate, 5 % off the measured sheet, not used',
    },
  },
  C36000: {
    family: 'brass',
    composition: {
      ...alloy,
      massPercent: { Cu: 61.5, Zn: 35.75, Pb: 2.75 },
      evidence: 'measured',
      source: 'leadedBrass',
      locator: 'C36000: copper 60 to 63, lead 2.5 to 3.0; the middle of each',
    },
    density: { ...dense(8.5, 0.005), evidence: 'fromMemory', source: 'memory', locator: 'C36000' },
  },
} as const satisfies Record<string, MetalFacts>;
