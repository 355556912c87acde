import { alloy, dense } from './metal-facts.ts';
import type { MetalData } from './metal-facts.ts';

/** Metals that are not etched here. Their data are enough to name, weigh and refuse them. */
export const refusedStock = {
  304: {
    composition: {
      ...alloy,
      massPercent: { Fe: 71.75, Cr: 19, Ni: 9.25 },
      evidence: 'measured',
      source: 'steelSheets',
      locator: '304: chromium 19, nickel 9.25, rest iron',
    },
    density: { ...dense(7.93, 0.005), evidence: 'measured', source: 'steelSheets', locator: '304' },
    otherDensity: { ...dense(8.0, null), evidence: 'measured', source: 'densityTables', locator: '304' },
  },
  316: {
    composition: {
      ...alloy,
      massPercent: { Fe: 68.5, Cr: 17, Ni: 12, Mo: 2.5 },
      evidence: 'measured',
      source: 'steelSheets',
      locator: '316: middle of chromium 16 to 18, nickel 10 to 14, molybdenum 2 to 3',
    },
    density: { ...dense(7.98, 0.005), evidence: 'measured', source: 'steelSheets', locator: '316' },
    otherDensity: { ...dense(8.0, null), evidence: 'measured', source: 'densityTables', locator: '316' },
  },
  'Al-1100': {
    composition: {
      ...alloy,
      massPercent: { Al: 99, Fe: 0.55, Si: 0.3, Cu: 0.15 },
      evidence: 'measured',
      source: 'aluminiumLimits',
      locator: '1100: silicon and iron at most 0.95, copper 0.05 to 0.20',
    },
    density: { ...dense(2.71, 0.004), evidence: 'measured', source: 'densityTables', locator: '1100-O' },
    otherDensity: { ...dense(2.72, null), evidence: 'measured', source: 'aluminiumLimits', locator: '1100' },
  },
  'Al-6061': {
    composition: {
      ...alloy,
      massPercent: { Al: 97.9, Mg: 1, Si: 0.6, Cu: 0.28, Cr: 0.2 },
      evidence: 'measured',
      source: 'aluminiumLimits',
      locator: '6061 nominal; chromium 0.04 to 0.35',
    },
    density: { ...dense(2.7, 0.004), evidence: 'measured', source: 'densityTables', locator: '6061' },
  },
  gold: {
    composition: {
      ...alloy,
      massPercent: { Au: 100 },
      evidence: 'measured',
      source: 'iupac2021',
      locator: 'element',
    },
    density: { ...dense(19.3, 0.002), evidence: 'measured', source: 'crcElementDensity', locator: 'gold' },
  },
} as const satisfies Record<string, MetalData>;
