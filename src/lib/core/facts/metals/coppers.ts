import { alloy, dense } from './metal-facts.ts';
import type { MetalFacts } from './metal-facts.ts';

/** Copper and tin bronze. */
export const coppers = {
  C11000: {
    family: 'copper',
    composition: {
      ...alloy,
      massPercent: { Cu: 100 },
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C11000 nominal',
    },
    density: {
      ...dense(8.96, 0.004),
      evidence: 'measured',
      source: 'crcElementDensity',
      locator: 'copper, 20 °C',
      note: 'wrought sheet is quoted at 8.91: the element value is used, the other kept',
    },
    otherDensity: {
      ...dense(8.91, null),
      evidence: 'measured',
      source: 'brassMill',
      locator: 'C11000, 0.322 lb/in3',
    },
  },
  C51000: {
    family: 'bronze',
    composition: {
      ...alloy,
      massPercent: { Cu: 94.8, Sn: 5, P: 0.2 },
      evidence: 'measured',
      source: 'bronzeMill',
      locator: 'C51000: tin 4.2 to 5.8, phosphorus 0.03 to 0.35',
    },
    density: {
      ...dense(8.86, 0.004),
      evidence: 'measured',
      source: 'bronzeMill',
      locator: '0.320 lb/in3 at 20 °C',
    },
    otherDensity: {
      ...dense(8.8, null),
      evidence: 'measured',
      source: 'densityTables',
      locator: 'C51000, rounded',
    },
  },
} as const satisfies Record<string, MetalFacts>;
